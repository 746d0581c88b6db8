package ampdays.report;

import ampdays.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/** What the client shall not read into the figures. */
final class NotPromised {
    private NotPromised() {}

    static List<String> of(Material material) {
        Trip trip = material.variant(material.base()).trip();
        List<String> texts = new ArrayList<>();
        texts.add("These are estimates for " + trip.days() + " days from " + Say.day(trip.start())
                + " in the weather of one file; another summer is warmer or cloudier. Other days, places and habits give other"
                + " figures.");
        texts.add("The figures hold for the timetable above. Who drives less, parks in the shade of trees or sets the"
                + " thermostat lower comes to other ones.");
        texts.add("No design makes it safe to leave a child or a pet alone in a parked van: when the cooling stops, it is"
                + " dangerously hot within the hour.");
        texts.add("It does not say how many years a part lives, and it is not a code check: have the installation"
                + " inspected by a licensed person.");
        return texts;
    }
}
