"""Views: an answer as text, HTML and drawings. Nothing is computed here but places on paper."""
