"""What stands on the screen: view providers, annotations, commands and panels."""
