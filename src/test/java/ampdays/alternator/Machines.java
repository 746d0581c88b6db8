package ampdays.alternator;

import java.util.List;

/** Alternators and engines for tests. */
final class Machines {
    private Machines() {}

    static final EngineSpec ENGINE =
            new EngineSpec(Fuel.DIESEL, 750, 1200, 1500, 2200, 0.9, 1.44, 40, 40, 30, 20, 45, 8, 3, 60);

    static final AlternatorSpec LARGE = alternator(280, new FormulaCurve(280, 1100, 1400), 280, 105, 120);

    /** A machine with the heat of the large frame and a regulator that neither waits nor ramps. */
    static AlternatorSpec alternator(
            double ratedA, OutputCurve curve, double capA, double cutBackFromC, double cutBackToC) {
        return new AlternatorSpec(
                ratedA,
                curve,
                2.8,
                14.2,
                capA,
                List.of(),
                0,
                0,
                cutBackFromC,
                cutBackToC,
                6000,
                3500,
                0.67,
                3000,
                5000,
                15,
                23,
                25,
                0.002);
    }
}
