package ampdays.sim;

import ampdays.results.Channel;
import ampdays.results.MinuteLog;
import ampdays.trip.People;
import ampdays.trip.Vehicle;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Writes every channel of the steps of a window into columns made before the run. */
final class MinuteRecorder implements Recorder {
    private static final List<Vehicle> VEHICLES = List.of(Vehicle.values());
    private static final List<People> PEOPLE = List.of(People.values());
    private static final List<ampdays.results.Limit> LIMITS = List.of(ampdays.results.Limit.values());

    private final TripClock clock;
    private final int firstStep;
    private final int endStep;
    private final EnumMap<Channel, float[]> columns = new EnumMap<>(Channel.class);

    /**
     * @param firstStep first step recorded
     * @param endStep first step no longer recorded
     */
    MinuteRecorder(TripClock clock, int firstStep, int endStep) {
        this(clock, firstStep, endStep, EnumSet.allOf(Channel.class));
    }

    /** @param channels that are kept; the state of charge always is */
    MinuteRecorder(TripClock clock, int firstStep, int endStep, Set<Channel> channels) {
        this.clock = clock;
        this.firstStep = firstStep;
        this.endStep = endStep;
        Set<Channel> kept = EnumSet.of(Channel.STATE_OF_CHARGE);
        kept.addAll(channels);
        for (Channel channel : kept) {
            float[] column = new float[endStep - firstStep];
            Arrays.fill(column, Float.NaN);
            columns.put(channel, column);
        }
    }

    @Override
    public void minute(Minute m, RunState state) {
        if (m.step < firstStep || m.step >= endStep) {
            return;
        }
        put(m, Channel.STATE_OF_CHARGE, state.bank.soc() * 100);
        put(m, Channel.BUS_VOLTAGE, m.busV);
        put(m, Channel.BANK_CURRENT, m.bankA);
        put(m, Channel.BANK_TEMPERATURE, state.bank.temperatureC());
        put(m, Channel.SOLAR_POSSIBLE, m.solarPossibleW);
        put(m, Channel.SOLAR, m.solarW);
        put(m, Channel.SHORE, m.shoreW);
        put(m, Channel.FACTORY_ALTERNATOR, m.factoryW);
        put(m, Channel.SECOND_ALTERNATOR, m.secondA * m.busV);
        put(m, Channel.LOADS, m.loadsW);
        put(m, Channel.COOLING, m.coolingW);
        put(m, Channel.REFRIGERATOR, m.refrigeratorW);
        put(m, Channel.LOSSES, m.lossesW);
        put(m, Channel.UNSERVED, m.unservedW);
        put(m, Channel.CURTAILED, m.curtailedW);
        put(m, Channel.OUTSIDE_AIR, m.outsideC);
        put(m, Channel.CABIN_AIR, state.cabin.airC());
        put(m, Channel.CABIN_MASS, state.cabin.massC());
        put(m, Channel.SECOND_CASE, state.second == null ? Double.NaN : state.second.caseC());
        put(m, Channel.FACTORY_CASE, state.factory == null ? Double.NaN : state.factory.caseC());
        put(m, Channel.SECOND_WINDING, state.second == null ? Double.NaN : state.second.windingC());
        put(
                m,
                Channel.FACTORY_WINDING,
                state.factory == null ? Double.NaN : state.factory.alternator().windingC());
        put(m, Channel.SECOND_CURRENT, state.second == null ? Double.NaN : m.secondA);
        put(m, Channel.FACTORY_CURRENT, state.factory == null ? Double.NaN : state.factory.outputA());
        put(m, Channel.RULING_LIMIT, LIMITS.indexOf(m.ruling));
        put(m, Channel.VEHICLE, VEHICLES.indexOf(clock.vehicle(m.step)));
        put(m, Channel.PEOPLE, PEOPLE.indexOf(clock.people(m.step)));
    }

    private void put(Minute m, Channel channel, double value) {
        float[] column = columns.get(channel);
        if (column != null) {
            column[m.step - firstStep] = (float) value;
        }
    }

    MinuteLog log() {
        return new MinuteLog(firstStep, columns);
    }
}
