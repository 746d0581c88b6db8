package ampdays.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

@Command(name = "weather")
final class WeatherCommand implements Callable<Integer> {
    @Override
    public Integer call() {
        return 0;
    }
}
