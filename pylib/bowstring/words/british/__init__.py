"""What is said otherwise on a British site."""
