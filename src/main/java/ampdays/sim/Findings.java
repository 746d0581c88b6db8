package ampdays.sim;

import ampdays.battery.BankSpec;
import ampdays.results.Finding;
import ampdays.results.Finding.Severity;
import ampdays.results.Limit;
import java.util.ArrayList;
import java.util.List;

/** What a run came across, one line per kind: when first, how long, how bad. */
final class Findings {
    static final double HOT_CABIN_C = 32;

    private final Kind idlingAsleep = new Kind();
    private final Kind cutOut = new Kind();
    private final Kind tooCold = new Kind();
    private final Kind heat = new Kind();
    private final Kind hotCabin = new Kind();
    private final Kind shed = new Kind();
    private final Kind inverter = new Kind();
    private final Kind startInverter = new Kind();
    private final Kind startBank = new Kind();
    private final Kind startSag = new Kind();
    private final double inverterRatedW;
    private final BankFindings bank;

    /** @param inverterRatedW continuous rating of the inverter, W; NaN without one */
    Findings(double inverterRatedW, BankSpec bank) {
        this.inverterRatedW = inverterRatedW;
        this.bank = new BankFindings(bank);
    }

    /** One kind of event, merged. */
    static final class Kind {
        private int first = -1;
        private int steps;
        private double worst = Double.NaN;

        double worst() {
            return worst;
        }

        void met(int step, double value) {
            first = first < 0 ? step : first;
            steps++;
            worst = worst >= value ? worst : value;
        }
    }

    void minute(Minute m, RunState state, Scene now) {
        bank.minute(m, state);
        if (now.asleep() && now.idles()) {
            idlingAsleep.met(m.step, 0);
        }
        if (state.bank.loadsCut()) {
            cutOut.met(m.step, 0);
        } else if (m.servedShare < 1) {
            shed.met(m.step, m.unservedW);
        }
        if (m.outletW > inverterRatedW) {
            inverter.met(m.step, m.outletW);
        }
        if (m.coolerStarts) {
            start(m);
        }
        if (m.ruling == Limit.TOO_COLD) {
            tooCold.met(m.step, -state.bank.temperatureC());
        }
        if (m.ruling == Limit.ALTERNATOR_HEAT) {
            heat.met(m.step, state.second == null ? state.factory.caseC() : state.second.caseC());
        }
        air(m.step, now, state.cabin.airC());
    }

    /** What the cabin's air at the end of a step says. */
    void air(int step, Scene now, double airC) {
        if (!now.away() && airC > HOT_CABIN_C) {
            hotCabin.met(step, airC);
        }
    }

    private void start(Minute m) {
        if (m.startOutletW > 0) {
            startInverter.met(m.step, m.startOutletW);
        }
        if (m.startBankA > 0) {
            startBank.met(m.step, m.startBankA);
        }
        if (m.startSagV > 0) {
            startSag.met(m.step, -m.startSagV);
        }
    }

    List<Finding> list(TripClock clock) {
        List<Finding> list = new ArrayList<>();
        add(
                list,
                clock,
                idlingAsleep,
                Severity.DANGER,
                "engine idles while people sleep",
                Double.NaN,
                "",
                "Carbon monoxide can kill sleepers. Never run the engine while people sleep in or beside the van; fit"
                        + " and test a carbon-monoxide alarm.");
        add(
                list,
                clock,
                hotCabin,
                Severity.CAUTION,
                "cabin above 32 °C with people in it",
                hotCabin.worst,
                "°C",
                "Heat is dangerous for children, elderly people and pets. No design makes it safe to leave them in a"
                        + " parked van.");
        add(
                list,
                clock,
                cutOut,
                Severity.CAUTION,
                "bank at its low cut-out",
                Double.NaN,
                "",
                "All loads are off until the bank has recovered: refrigerator, fan, alarms and cooling with them.");
        add(
                list,
                clock,
                shed,
                Severity.CAUTION,
                "loads ask for more than the bank can give",
                shed.worst,
                "W",
                "Check the discharge limit of the bank against the loads that run together.");
        add(
                list,
                clock,
                inverter,
                Severity.CAUTION,
                "inverter asked for more than its rating",
                inverter.worst,
                "W",
                "It will switch off. Fit a larger one or do not run these loads together.");
        add(
                list,
                clock,
                startInverter,
                Severity.CAUTION,
                "start of the air conditioner exceeds the inverter's surge",
                startInverter.worst,
                "W",
                "The inverter may switch off at each start. Fit a soft start or a larger inverter.");
        add(
                list,
                clock,
                startBank,
                Severity.CAUTION,
                "start of the air conditioner exceeds what the bank may give",
                startBank.worst,
                "A",
                "Ask how long the bank's protection stands this current; it lasts some hundred milliseconds.");
        add(
                list,
                clock,
                startSag,
                Severity.CAUTION,
                "voltage sag at the air conditioner's start trips its cut-out",
                -startSag.worst,
                "V",
                "It stops until the voltage is back. A larger bank, shorter cables or a soft start help.");
        add(
                list,
                clock,
                tooCold,
                Severity.NOTE,
                "charging refused: bank too cold",
                -tooCold.worst,
                "°C",
                "Lithium cells must not be charged below 0 °C; warm the bank first.");
        add(
                list,
                clock,
                heat,
                Severity.NOTE,
                "alternator held back by its own heat",
                heat.worst,
                "°C",
                "The regulator cuts the current back; more air to the alternator or a higher idle gives more.");
        bank.addTo(list, clock);
        return list;
    }

    static void add(
            List<Finding> list,
            TripClock clock,
            Kind kind,
            Severity severity,
            String name,
            double worst,
            String unit,
            String text) {
        if (kind.steps > 0) {
            double minutes = kind.steps * clock.stepSeconds() / 60.0;
            list.add(new Finding(severity, name, clock.epochSecond(kind.first), minutes, worst, unit, text));
        }
    }
}
