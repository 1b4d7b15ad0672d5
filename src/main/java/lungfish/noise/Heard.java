package lungfish.noise;

/**
 * What one source adds at the ear.
 *
 * @param dba at the ear
 * @param powerDba sound power level of all its machines, after filters and silencers
 * @param distanceM from the ear
 * @param directivity Q of its place
 * @param reductionDb what walls between take off
 */
public record Heard(
        SoundSource source, double dba, double powerDba, double distanceM, double directivity, double reductionDb) {}
