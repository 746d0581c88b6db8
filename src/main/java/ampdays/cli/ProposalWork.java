package ampdays.cli;

import ampdays.chart.BreakEven;
import ampdays.chart.jfree.ChartRenderer;
import ampdays.chart.jfree.Logo;
import ampdays.io.InputException;
import ampdays.io.InputProblem;
import ampdays.io.PresetReader;
import ampdays.io.ShopReader;
import ampdays.report.Material;
import ampdays.report.Proposal;
import ampdays.report.ProposalMaker;
import ampdays.report.Studies;
import ampdays.report.page.HtmlPage;
import ampdays.report.page.Paper;
import ampdays.report.page.PdfPage;
import ampdays.results.Chances;
import ampdays.results.HeatAfterLoss;
import ampdays.results.Matters;
import ampdays.results.RunResult;
import ampdays.results.SweepTable;
import ampdays.results.WholeFile;
import ampdays.results.WiringResult;
import ampdays.scenario.BreakEvenGrid;
import ampdays.shop.Shop;
import ampdays.sim.RunPlan;
import ampdays.study.Compare;
import ampdays.study.Comparison;
import ampdays.study.GridTable;
import ampdays.study.LossOfCooling;
import ampdays.study.ManyTrips;
import ampdays.study.UpgradePath;
import ampdays.study.UpgradePath.Stage;
import ampdays.study.WhatMatters;
import ampdays.study.WiringCheck;
import ampdays.units.UnitSystem;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Reads, simulates, and writes a proposal. Apart from the command, so that looking into the command does not load charts.
 *
 * @param reference the line that says for whom it is; may be empty
 * @param samples trips of each option for its chances; 0 for none
 * @param inDepth whether to find out what matters most as well
 * @param program its name and version
 */
record ProposalWork(
        Path file,
        boolean brief,
        String reference,
        Optional<Path> shopFile,
        Optional<LocalDate> date,
        UnitSystem units,
        Paper paper,
        int samples,
        boolean inDepth,
        String program) {
    private static final long SEED = 1;
    private static final int MATTERS_SAMPLES = 128;
    private static final int WORKERS = Runtime.getRuntime().availableProcessors();

    void write(Optional<Path> out, PrintWriter screen, PrintWriter remarks)
            throws IOException, InputException, UsageException {
        Loaded asWritten = Loaded.read(file);
        Optional<Shop> shop = shopFile.isEmpty() ? Optional.empty() : Optional.of(ShopReader.read(shopFile.get()));
        Optional<ShopPrices> prices = shop.map(
                one -> new ShopPrices(one, shopFile.orElseThrow().getFileName().toString(), asWritten));
        Loaded loaded = prices.isEmpty() ? asWritten : prices.get().laidOver();
        ChartRenderer charts = new ChartRenderer();
        Optional<byte[]> logo = logo(shop);
        Proposal proposal = proposal(loaded, shop);
        FutureTask<String> html = new FutureTask<>(() -> HtmlPage.of(proposal, paper, logo, charts));
        new Thread(html, "page").start();
        byte[] pdf = pdf(proposal, logo, charts);
        String page = finished(html);
        Path folder = out.orElse(Path.of("out").resolve(loaded.scenario().name()));
        Path written = folder.resolve("proposal.html");
        WholeFile.writeText(written, page);
        Path sheets = folder.resolve("proposal.pdf");
        WholeFile.write(sheets, to -> to.write(pdf));
        loaded.remarks().forEach(remarks::println);
        prices.flatMap(ShopPrices::leftOut).ifPresent(remarks::println);
        screen.println("Written: " + written + " and " + sheets.getFileName() + ".");
        screen.println("Estimates, not a code check; have the installation inspected by a licensed person.");
    }

    private byte[] pdf(Proposal proposal, Optional<byte[]> logo, ChartRenderer charts) throws IOException {
        List<String> complaints = new ArrayList<>();
        byte[] pdf = PdfPage.of(proposal, paper, logo, date, charts, complaints::add);
        if (!complaints.isEmpty()) {
            throw new IllegalStateException("the layout did not understand: " + String.join("; ", complaints));
        }
        return pdf;
    }

    /** The page, which is filled while the sheets are laid out. */
    private static String finished(FutureTask<String> html) throws IOException {
        try {
            return html.get();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("Laying out the proposal was interrupted.", e);
        }
    }

    private Proposal proposal(Loaded loaded, Optional<Shop> shop) throws IOException, InputException, UsageException {
        List<RunPlan> plans = loaded.plans(Outputs.STEP_SECONDS);
        Comparison comparison = Compare.of(loaded.scenario(), plans);
        List<Material.InputFile> inputs = new ArrayList<>(loaded.inputs());
        if (shopFile.isPresent()) {
            inputs.add(Loaded.input("shop", shopFile.get().getFileName().toString(), shopFile.get()));
        }
        Optional<Path> logo = shop.flatMap(Shop::logo);
        if (logo.isPresent()) {
            inputs.add(Loaded.input("logo", logo.get().getFileName().toString(), logo.get()));
        }
        Material material = new Material(
                loaded.file(),
                comparison,
                PresetReader.presets(),
                shop,
                reference,
                date,
                units,
                program,
                inputs,
                studies(loaded, shop, comparison, plans));
        return ProposalMaker.of(material, brief);
    }

    private Studies studies(Loaded loaded, Optional<Shop> shop, Comparison comparison, List<RunPlan> plans)
            throws IOException, InputException, UsageException {
        RunResult best = Material.best(comparison).result();
        HeatAfterLoss heat = LossOfCooling.of(
                loaded.scenario().variant(best.option()).orElseThrow(),
                loaded.file().values(best.option()).orElseThrow(),
                loaded.planner(Outputs.STEP_SECONDS));
        List<WiringResult> wiring = plans.stream()
                .filter(plan -> !brief && !plan.variant().design().circuits().isEmpty())
                .map(plan -> WiringCheck.of(plan, false).result())
                .toList();
        return new Studies(
                chances(loaded),
                Optional.of(heat),
                matters(loaded, best.option()),
                breakEven(loaded, shop),
                stages(loaded, shop, comparison),
                wiring);
    }

    private List<Stage> stages(Loaded loaded, Optional<Shop> shop, Comparison comparison) {
        return UpgradePath.of(
                loaded.file(),
                comparison.options().get(0).result(),
                wholePrices(shop),
                loaded.planner(Outputs.STEP_SECONDS));
    }

    private static Map<String, Double> wholePrices(Optional<Shop> shop) {
        return shop.map(Shop::optionPrices).orElse(Map.of());
    }

    private Optional<SweepTable> breakEven(Loaded loaded, Optional<Shop> shop)
            throws IOException, InputException, UsageException {
        if (brief
                || BreakEvenGrid.hindrance(loaded.file(), BreakEven.MOST_OPTIONS)
                        .isPresent()) {
            return Optional.empty();
        }
        return Optional.of(GridTable.of(
                loaded.file(),
                BreakEvenGrid.coarse(loaded.file()),
                wholePrices(shop),
                loaded.planner(Outputs.STEP_SECONDS),
                WORKERS));
    }

    private Optional<Chances> chances(Loaded loaded) throws IOException, InputException, UsageException {
        if (samples == 0) {
            return Optional.empty();
        }
        return Optional.of(new ManyTrips(loaded.file(), weather(loaded), samples, SEED).run(WORKERS, () -> {}));
    }

    private Optional<Matters> matters(Loaded loaded, String option) throws IOException, InputException, UsageException {
        if (!inDepth || brief) {
            return Optional.empty();
        }
        return Optional.of(new WhatMatters(
                        loaded.file(),
                        loaded.scenario().variant(option).orElseThrow(),
                        weather(loaded),
                        loaded.planner(Outputs.STEP_SECONDS),
                        WORKERS,
                        () -> {})
                .run(MATTERS_SAMPLES, SEED));
    }

    private static DrawnWeather weather(Loaded loaded) throws IOException, InputException, UsageException {
        DrawnWeather weather = new DrawnWeather(loaded, SEED);
        Draws.refuseImpossible(loaded, weather);
        return weather;
    }

    private Optional<byte[]> logo(Optional<Shop> shop) throws IOException, InputException {
        Optional<Path> given = shop.flatMap(Shop::logo);
        if (given.isEmpty()) {
            return Optional.empty();
        }
        Optional<byte[]> scaled = Logo.scaled(Files.readAllBytes(given.get()));
        if (scaled.isEmpty()) {
            throw new InputException(List.of(new InputProblem(
                    given.get().getFileName().toString(),
                    0,
                    0,
                    "The picture is damaged and cannot be read. Save it anew as PNG.")));
        }
        return scaled;
    }
}
