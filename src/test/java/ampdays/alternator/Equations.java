package ampdays.alternator;

import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/** Differential equations for the reference integrator, from a function. */
record Equations(int dimension, Rates rates) implements FirstOrderDifferentialEquations {
    /** Rates of change at a time and a state. */
    interface Rates {
        void at(double time, double[] state, double[] rate);
    }

    @Override
    public int getDimension() {
        return dimension;
    }

    @Override
    public void computeDerivatives(double time, double[] state, double[] rate) {
        rates.at(time, state, rate);
    }
}
