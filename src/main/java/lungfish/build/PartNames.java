package lungfish.build;

import lungfish.catalogue.FittingClass;

/** What parts are called in a shop, where their class is named by what the air does in them. */
final class PartNames {
    private PartNames() {}

    static String of(FittingClass fitting) {
        return switch (fitting.id()) {
            case "tee-run", "tee-branch" -> "Tee";
            case "tee-run-threaded" -> "Tee, threaded";
            case "tee-run-flanged", "tee-branch-flanged" -> "Tee, flanged";
            default -> fitting.name();
        };
    }
}
