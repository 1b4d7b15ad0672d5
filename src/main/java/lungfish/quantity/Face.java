package lungfish.quantity;

import java.util.List;

/** How one dimension looks in one system of units. */
interface Face {
    /** The number with its unit. */
    String show(double si);

    /** One unit, or another where the number is small or large: the last step not above the number is taken. */
    record Steps(List<Step> steps) implements Face {
        /** From this size on (SI, without sign), this unit and these figures. */
        record Step(double fromSi, Unit unit, Figures figures) {
            String show(double si) {
                String number = figures.show(unit.fromSi(si));
                return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
            }

            /** Whether this is nothing, or too little to show, on a scale that begins at zero. */
            boolean isZero(double si) {
                return unit.siAtZero() == 0 && figures.show(unit.fromSi(si)).equals("0");
            }
        }

        public Steps {
            steps = List.copyOf(steps);
        }

        static Steps of(Unit unit, Figures figures) {
            return new Steps(List.of(new Step(0, unit, figures)));
        }

        /** The small unit below the size of {@code fromSi}, the large one from there on; zero is shown in the large. */
        static Steps of(Unit small, Figures smallFigures, double fromSi, Unit large, Figures largeFigures) {
            return new Steps(List.of(new Step(0, small, smallFigures), new Step(fromSi, large, largeFigures)));
        }

        @Override
        public String show(double si) {
            Step largest = steps.get(steps.size() - 1);
            Step taken = steps.get(0);
            for (Step step : steps) {
                taken = Math.abs(si) >= step.fromSi() ? step : taken;
            }
            return taken.isZero(si) ? largest.show(0) : taken.show(si);
        }
    }
}
