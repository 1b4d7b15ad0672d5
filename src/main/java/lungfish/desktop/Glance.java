package lungfish.desktop;

/** What one side panel says: a sentence, and the reason under it. */
record Glance(String title, String headline, String reason) {}
