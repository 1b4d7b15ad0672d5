package lungfish.rescue;

import lungfish.catalogue.BackupClass;

/**
 * Gear of which no class on sale is large enough.
 *
 * @param askedW what it would have to bear for ever
 * @param askedSurgeW what it would have to bear for a moment
 */
public record Unfit(BackupClass.Kind kind, double askedW, double askedSurgeW) {}
