"""Methods: recipes that put an arc on the ground out of the construction's steps."""
