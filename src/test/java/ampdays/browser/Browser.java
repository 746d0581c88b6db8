package ampdays.browser;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A headless Chromium, told what to do over its debugging protocol. */
public final class Browser implements AutoCloseable {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int PATIENCE_S = 60;
    private static final List<Path> PLACES =
            List.of(Path.of("/usr/bin/chromium"), Path.of("/usr/bin/chromium-browser"));

    private final Process process;
    private final WebSocket socket;
    private final Map<Integer, CompletableFuture<JsonNode>> answers = new ConcurrentHashMap<>();
    private final List<String> requests = new ArrayList<>();
    private final List<String> complaints = new ArrayList<>();
    private CompletableFuture<Void> loaded = new CompletableFuture<>();
    private int lastId;

    private Browser(Process process, URI page) {
        this.process = process;
        this.socket = HttpClient.newHttpClient()
                .newWebSocketBuilder()
                .buildAsync(page, new Ear())
                .join();
    }

    public static Optional<Path> installed() {
        return PLACES.stream().filter(Files::isExecutable).findFirst();
    }

    /**
     * Starts one.
     *
     * @param profile an empty folder
     */
    public static Browser start(Path profile) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(installed().orElseThrow().toString()));
        Stream.of(
                        "headless",
                        "no-sandbox",
                        "disable-gpu",
                        "disable-quic",
                        "no-first-run",
                        "disable-background-networking",
                        "disable-component-update",
                        "disable-sync",
                        "hide-scrollbars",
                        "remote-debugging-port=0",
                        "user-data-dir=" + profile)
                .map(flag -> "--" + flag)
                .forEach(command::add);
        command.add("about:blank");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(profile.resolve("browser.log").toFile())
                .start();
        Path told = profile.resolve("DevToolsActivePort");
        for (int i = 0; i < 10 * PATIENCE_S && (!Files.exists(told) || Files.size(told) == 0); i++) {
            Thread.sleep(100);
        }
        String port = Files.readAllLines(told).get(0);
        HttpResponse<String> list = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + "/json/list"))
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        for (JsonNode target : JSON.readTree(list.body())) {
            if (target.get("type").asText().equals("page")) {
                Browser browser = new Browser(
                        process, URI.create(target.get("webSocketDebuggerUrl").asText()));
                for (String domain : List.of("Page", "Runtime", "Log", "Network")) {
                    browser.send(domain + ".enable", Map.of());
                }
                return browser;
            }
        }
        process.destroy();
        throw new IOException("the browser has no page");
    }

    /** Opens a file in a window of a size, and waits until all of it is there. */
    public void open(Path file, int width, int height) {
        requests.clear();
        complaints.clear();
        loaded = new CompletableFuture<>();
        send(
                "Emulation.setDeviceMetricsOverride",
                Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", width < 600));
        send("Page.navigate", Map.of("url", file.toUri().toString()));
        loaded.orTimeout(PATIENCE_S, TimeUnit.SECONDS).join();
    }

    /** Addresses asked for since the page was opened, its own first. */
    public List<String> requests() {
        return List.copyOf(requests);
    }

    /** What the console said since then. */
    public List<String> complaints() {
        return List.copyOf(complaints);
    }

    /** The value of an expression. */
    public JsonNode evaluate(String expression) {
        JsonNode answer = send("Runtime.evaluate", Map.of("expression", expression, "returnByValue", true));
        if (answer.has("exceptionDetails")) {
            throw new IllegalStateException(answer.get("exceptionDetails").toString());
        }
        return answer.get("result").get("value");
    }

    public byte[] screenshot(boolean whole) {
        return data(send("Page.captureScreenshot", Map.of("format", "png", "captureBeyondViewport", whole)));
    }

    public byte[] print() {
        return data(send("Page.printToPDF", Map.of("preferCSSPageSize", true, "printBackground", true)));
    }

    private static byte[] data(JsonNode answer) {
        return Base64.getDecoder().decode(answer.get("data").asText());
    }

    private synchronized JsonNode send(String method, Map<String, Object> parameters) {
        lastId++;
        CompletableFuture<JsonNode> answer = new CompletableFuture<>();
        answers.put(lastId, answer);
        ObjectNode message = JSON.createObjectNode().put("id", lastId).put("method", method);
        message.set("params", JSON.valueToTree(parameters));
        socket.sendText(message.toString(), true).join();
        return answer.orTimeout(PATIENCE_S, TimeUnit.SECONDS).join();
    }

    @Override
    public void close() {
        socket.abort();
        // all of its processes, since those that are left go on to write into the profile
        List<ProcessHandle> all = Stream.concat(process.descendants(), Stream.of(process.toHandle()))
                .toList();
        all.forEach(ProcessHandle::destroyForcibly);
        all.forEach(one -> one.onExit().orTimeout(PATIENCE_S, TimeUnit.SECONDS).join());
    }

    private void heard(JsonNode message) {
        if (message.has("id")) {
            CompletableFuture<JsonNode> answer =
                    answers.remove(message.get("id").asInt());
            if (message.has("error")) {
                answer.completeExceptionally(
                        new IllegalStateException(message.get("error").toString()));
            } else {
                answer.complete(message.get("result"));
            }
            return;
        }
        JsonNode told = message.get("params");
        switch (message.get("method").asText()) {
            case "Page.loadEventFired" -> loaded.complete(null);
            case "Network.requestWillBeSent" ->
                requests.add(told.at("/request/url").asText());
            case "Log.entryAdded" -> complaints.add(told.at("/entry/text").asText());
            case "Runtime.consoleAPICalled", "Runtime.exceptionThrown" -> complaints.add(told.toString());
            default -> {
                // other events are of no interest
            }
        }
    }

    /** Puts the parts of a message together. */
    private final class Ear implements WebSocket.Listener {
        private final StringBuilder text = new StringBuilder();

        @Override
        public CompletionStage<?> onText(WebSocket from, CharSequence part, boolean last) {
            text.append(part);
            if (last) {
                try {
                    heard(JSON.readTree(text.toString()));
                } catch (IOException e) {
                    throw new IllegalStateException(e);
                } finally {
                    text.setLength(0);
                }
            }
            from.request(1);
            return null;
        }
    }
}
