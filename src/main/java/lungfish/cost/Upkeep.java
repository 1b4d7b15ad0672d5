package lungfish.cost;

/**
 * Rebuilds and replacements of one machine that never rests: rebuilt at every interval of its life, then replaced by a
 * new one of its kind.
 */
record Upkeep(double rebuildS, double lifeS) {
    /** Replacements up to an age of the first machine. */
    long replacements(double ageS) {
        return (long) Math.floor(ageS / lifeS);
    }

    /** Rebuilds up to an age of the first machine; none at the very end of a life. */
    long rebuilds(double ageS) {
        long lives = replacements(ageS);
        return lives * rebuildsInALife() + (long) Math.floor((ageS - lives * lifeS) / rebuildS);
    }

    /** None at its end. */
    long rebuildsInALife() {
        return (long) Math.ceil(lifeS / rebuildS) - 1;
    }
}
