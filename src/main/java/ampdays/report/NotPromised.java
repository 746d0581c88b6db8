package ampdays.report;

import ampdays.trip.Trip;
import java.util.ArrayList;
import java.util.List;

/** What the client shall not read into the figures. */
final class NotPromised {
    private NotPromised() {}

    static List<String> of(Material material, boolean brief) {
        Trip trip = material.variant(material.base()).trip();
        List<String> texts = new ArrayList<>();
        String years = brief || material.studies().chances().isEmpty() ? "" : " See “How sure it is”.";
        texts.add("The same in another year: these are " + trip.days() + " days from " + Say.day(trip.start())
                + " in the weather of one file." + years);
        texts.add(
                "The same with other habits: who drives less, parks under trees or cools deeper comes to other figures.");
        texts.add(
                "Safety for a child or a pet left alone: when the cooling stops, a parked van is dangerously hot within the"
                        + " hour.");
        texts.add("Years of life of any part; and it is not a code check: have the installation inspected by a licensed"
                + " person.");
        return texts;
    }
}
