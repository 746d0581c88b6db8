package ampdays.report;

import ampdays.report.Block.Column;
import ampdays.report.Block.Form;
import ampdays.report.Block.Row;
import ampdays.report.Block.Sheet;
import ampdays.scenario.Values;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The models that took part in the figures, with their sources. Kept in step with docs/MODEL.md by a test. */
final class ModelSources {
    /** Each source as docs/MODEL.md names it. */
    static final List<Model> ALL = List.of(
            new Model("place of the sun", "R. Grena, 2012, Solar Energy 86, 1323", ModelSources::always),
            new Model(
                    "diffuse light, where the weather file lacks it",
                    "D. G. Erbs, S. A. Klein and J. A. Duffie, 1982, Solar Energy 28, 293",
                    ModelSources::always),
            new Model(
                    "light on roof and walls",
                    "J. E. Hay and J. A. Davies, 1980, First Canadian Solar Radiation Data Workshop, 59",
                    ModelSources::always),
            new Model(
                    "temperature of the cells",
                    "D. L. King, W. E. Boyson and J. A. Kratochvil, 2004, SAND2004-3535",
                    values -> values.has("solar")),
            new Model("power of the panels", "A. P. Dobos, 2014, NREL/TP-6A20-62641", values -> values.has("solar")),
            new Model("weak light", "B. Marion, 2008, 33rd IEEE PVSC", values -> values.has("solar")),
            new Model(
                    "heat through roof, walls and glass",
                    "ASHRAE Handbook of Fundamentals (sol-air equations 28 to 30",
                    ModelSources::always),
            new Model(
                    "air conditioner, split unit of one speed",
                    "D. Cutler et al., 2013, NREL/TP-5500-56354",
                    values -> values.word("cooling.curves").equals("split")),
            new Model(
                    "air conditioner, capacity, input and part load",
                    "public building-energy model inputs",
                    values -> values.has("cooling")),
            new Model(
                    "refrigerator",
                    "Carnot with approaches; checked against a published band of use by ambient temperature",
                    values -> values.has("refrigerator")),
            new Model("inverter", "a common three-term form", values -> values.has("inverter")),
            new Model(
                    "alternators, rating and temperature",
                    "Westerbeke 33A engine manual, p. 83",
                    ModelSources::hasAlternator),
            new Model(
                    "alternators, efficiency and fuel",
                    "Commission Implementing Decisions (EU) 2017/785 and 2020/728",
                    ModelSources::hasAlternator),
            new Model(
                    "bank, voltage without load",
                    "a cell maker's specification, Q/GX 030-2019, appendix A.4",
                    values -> !values.isLeadAcid()),
            new Model(
                    "bank, ageing",
                    "M. Naumann et al., J. Energy Storage 17 (2018) 153",
                    values -> !values.isLeadAcid()),
            new Model(
                    "bank, two wells",
                    "J. F. Manwell and J. G. McGowan, Solar Energy 50 (1993) 399",
                    Values::isLeadAcid));

    private ModelSources() {}

    /** A model, its source, and the designs in which it takes part. */
    record Model(String what, String source, Predicate<Values> takesPart) {}

    static Part of(Material material) {
        List<Row> rows = ALL.stream()
                .filter(model -> material.options().stream()
                        .anyMatch(option -> model.takesPart().test(material.values(option))))
                .map(model -> Row.of(List.of(model.what(), closed(model.source()))))
                .toList();
        return Part.of(
                "models",
                "Models and sources",
                Stream.of(new Sheet(
                        "Models that took part",
                        List.of(Column.words("Model of"), Column.words("after")),
                        rows,
                        Form.PLAIN,
                        List.of("All equations, what they leave out and how each is checked stand in the program’s own"
                                + " documents (docs/MODEL.md)."))));
    }

    private static String closed(String source) {
        return source.contains("(") && !source.contains(")") ? source + ")" : source;
    }

    private static boolean always(Values values) {
        return true;
    }

    private static boolean hasAlternator(Values values) {
        return values.has("factory-alternator") || values.has("second-alternator");
    }
}
