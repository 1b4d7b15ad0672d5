package lungfish.cost;

/**
 * Rebuilds and replacements of one machine that never rests: rebuilt at every interval of its life, then replaced by a
 * new one of its kind. What falls due on the last day counted is left to the day after: nobody who counts ten years buys a
 * machine for none of them.
 */
record Upkeep(double rebuildS, double lifeS) {
    /** Replacements before an age of the first machine. */
    long replacements(double ageS) {
        return timesBefore(ageS, lifeS);
    }

    /** Rebuilds before an age of the first machine; none at the very end of a life. */
    long rebuilds(double ageS) {
        long lives = replacements(ageS);
        return lives * rebuildsInALife() + timesBefore(ageS - lives * lifeS, rebuildS);
    }

    private static long timesBefore(double ageS, double everyS) {
        return Math.max(0, (long) Math.ceil(ageS / everyS) - 1);
    }

    /** None at its end. */
    long rebuildsInALife() {
        return timesBefore(lifeS, rebuildS);
    }
}
