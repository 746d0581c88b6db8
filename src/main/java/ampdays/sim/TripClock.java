package ampdays.sim;

import ampdays.trip.DayKind;
import ampdays.trip.People;
import ampdays.trip.Shade;
import ampdays.trip.Stretch;
import ampdays.trip.Trip;
import ampdays.trip.Vehicle;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;

/**
 * The timetable laid out step by step: what holds in each step of the trip. People's times are local civil time, so a day
 * on which the clocks change has more or fewer steps than others.
 */
public final class TripClock {
    private static final int MINUTES_A_DAY = 1440;

    private final Trip trip;
    private final int stepSeconds;
    private final long startEpochSecond;
    private final int steps;
    private final Stretch[] stretches;
    private final short[] stretchOfStep;
    private final short[] minuteOfDay;
    private final int[] firstStepOfDay;

    private TripClock(Trip trip, int stepSeconds) {
        this.trip = trip;
        this.stepSeconds = stepSeconds;
        this.startEpochSecond = midnight(trip.start());
        this.steps = Math.toIntExact((midnight(trip.start().plusDays(trip.days())) - startEpochSecond) / stepSeconds);
        this.stretchOfStep = new short[steps];
        this.minuteOfDay = new short[steps];
        this.firstStepOfDay = new int[trip.days() + 1];
        this.stretches =
                trip.kinds().stream().flatMap(kind -> kind.stretches().stream()).toArray(Stretch[]::new);
        layOut();
    }

    /**
     * Lays out a trip.
     *
     * @param stepSeconds a divisor of 300 s
     */
    public static TripClock of(Trip trip, int stepSeconds) {
        if (stepSeconds < 1 || 300 % stepSeconds != 0) {
            throw new IllegalArgumentException("the step must divide 300 s, but is " + stepSeconds + " s");
        }
        return new TripClock(trip, stepSeconds);
    }

    private long midnight(LocalDate date) {
        return date.atStartOfDay(trip.zone()).toEpochSecond();
    }

    private void layOut() {
        ZoneRules rules = trip.zone().getRules();
        List<Integer> firstOfKind = new ArrayList<>();
        int stretchesSoFar = 0;
        for (DayKind kind : trip.kinds()) {
            firstOfKind.add(stretchesSoFar);
            stretchesSoFar += kind.stretches().size();
        }
        DayKind firstKind = trip.kinds().get(trip.kindOfDay().get(0));
        int current =
                firstOfKind.get(trip.kindOfDay().get(0)) + firstKind.stretches().size() - 1;
        int step = 0;
        for (int day = 0; day < trip.days(); day++) {
            firstStepOfDay[day] = step;
            int kind = trip.kindOfDay().get(day);
            List<Stretch> lines = trip.kinds().get(kind).stretches();
            long endOfDay = midnight(trip.start().plusDays(day + 1));
            long time = startEpochSecond + (long) step * stepSeconds;
            int offset = rules.getOffset(Instant.ofEpochSecond(time)).getTotalSeconds();
            boolean clocksChange = offset
                    != rules.getOffset(Instant.ofEpochSecond(endOfDay - 1)).getTotalSeconds();
            int next = 0;
            for (; time < endOfDay; time += stepSeconds) {
                if (clocksChange) {
                    offset = rules.getOffset(Instant.ofEpochSecond(time)).getTotalSeconds();
                }
                int minute = (int) (Math.floorMod(time + offset, 86_400L) / 60);
                while (next < lines.size() && lines.get(next).fromMinuteOfDay() <= minute) {
                    current = firstOfKind.get(kind) + next;
                    next++;
                }
                minuteOfDay[step] = (short) (minute % MINUTES_A_DAY);
                stretchOfStep[step] = (short) current;
                step++;
            }
        }
        firstStepOfDay[trip.days()] = step;
    }

    private TripClock(TripClock planned, Stretch[] stretches, short[] stretchOfStep) {
        this.trip = planned.trip;
        this.stepSeconds = planned.stepSeconds;
        this.startEpochSecond = planned.startEpochSecond;
        this.steps = planned.steps;
        this.stretches = stretches;
        this.stretchOfStep = stretchOfStep;
        this.minuteOfDay = planned.minuteOfDay;
        this.firstStepOfDay = planned.firstStepOfDay;
    }

    /**
     * The same timetable but for the engine. Where it ran against the plan, the van went as it does on most of its way.
     */
    TripClock withEngine(Measured measured) {
        List<Stretch> lines = new ArrayList<>(List.of(stretches));
        int[] other = new int[stretches.length];
        short[] lineOfStep = stretchOfStep.clone();
        Vehicle usual = usualDrive();
        for (int step = 0; step < steps; step++) {
            boolean ran = measured.engineRan(step, engineRuns(step));
            if (ran != engineRuns(step)) {
                int line = stretchOfStep[step];
                if (other[line] == 0) {
                    other[line] = lines.size();
                    lines.add(withVehicle(stretches[line], ran ? usual : Vehicle.PARKED));
                }
                lineOfStep[step] = (short) other[line];
            }
        }
        return new TripClock(this, lines.toArray(new Stretch[0]), lineOfStep);
    }

    private static Stretch withVehicle(Stretch line, Vehicle vehicle) {
        return new Stretch(
                line.fromMinuteOfDay(),
                vehicle,
                line.shade(),
                false,
                line.people(),
                vehicle.moves() ? Double.NaN : line.headingDeg(),
                line.windows());
    }

    private Vehicle usualDrive() {
        int[] steps = new int[stretches.length];
        for (short line : stretchOfStep) {
            steps[line]++;
        }
        int most = -1;
        for (int line = 0; line < steps.length; line++) {
            if (stretches[line].vehicle().engineRuns() && (most < 0 || steps[line] > steps[most])) {
                most = line;
            }
        }
        return most < 0 ? Vehicle.TOWN : stretches[most].vehicle();
    }

    public Trip trip() {
        return trip;
    }

    public int days() {
        return trip.days();
    }

    /** State of charge that counts as empty, 0 to 1. */
    public double reserveShare() {
        return trip.reserveShare();
    }

    public ZoneId zone() {
        return trip.zone();
    }

    public int stepSeconds() {
        return stepSeconds;
    }

    public long startEpochSecond() {
        return startEpochSecond;
    }

    public int steps() {
        return steps;
    }

    /** First instant of a step, seconds since 1970 UTC. */
    public long epochSecond(int step) {
        return startEpochSecond + (long) step * stepSeconds;
    }

    public int firstStepOfDay(int day) {
        return firstStepOfDay[day];
    }

    public LocalDate date(int day) {
        return trip.start().plusDays(day);
    }

    public int minuteOfDay(int step) {
        return minuteOfDay[step];
    }

    public Vehicle vehicle(int step) {
        return stretches[stretchOfStep[step]].vehicle();
    }

    public boolean engineRuns(int step) {
        return vehicle(step).engineRuns();
    }

    public People people(int step) {
        return stretches[stretchOfStep[step]].people();
    }

    public boolean asleep(int step) {
        return people(step) == People.ASLEEP;
    }

    /** Whether the van is left alone in a step. */
    public boolean nobodyHome(int step) {
        return people(step) == People.AWAY;
    }

    /** Whether the van hangs on a hook-up in a step. */
    public boolean hookUp(int step) {
        return stretches[stretchOfStep[step]].hookUp();
    }

    /** All lines of the timetable. */
    Stretch[] lines() {
        return stretches.clone();
    }

    /** Which line of the timetable holds in a step. */
    int line(int step) {
        return stretchOfStep[step];
    }

    /** The line of the timetable that holds in a step. */
    public Stretch stretch(int step) {
        return stretches[stretchOfStep[step]];
    }

    public Shade shade(int step) {
        return stretches[stretchOfStep[step]].shade();
    }
}
