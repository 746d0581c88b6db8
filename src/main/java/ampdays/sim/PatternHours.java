package ampdays.sim;

/** How long each pattern of loads ran, and at which voltages, so that every load's energy can be told at the end. */
final class PatternHours {
    final double[] hours;
    final double[] voltHours;

    PatternHours(int patterns) {
        hours = new double[patterns];
        voltHours = new double[patterns];
    }

    void add(int pattern, double timeH, double busV) {
        hours[pattern] += timeH;
        voltHours[pattern] += busV * timeH;
    }

    double hours(int pattern) {
        return hours[pattern];
    }

    double voltHours(int pattern) {
        return voltHours[pattern];
    }
}
