"""What ``prepare.mjs`` calls inside the browser's Python: it installs, makes lean, compiles and traces there."""
