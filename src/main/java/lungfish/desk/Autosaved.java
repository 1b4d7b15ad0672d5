package lungfish.desk;

import java.time.Instant;

/**
 * What an autosave holds.
 *
 * @param at when it was written, by the clock of its machine
 * @param owner who wrote it
 */
public record Autosaved(Unsaved what, Instant at, Owner owner) {}
