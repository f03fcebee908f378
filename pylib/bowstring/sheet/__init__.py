"""An answer as a document: its outline, and that as HTML, text and values."""
