package trimwright.intake;

import java.nio.charset.Charset;
import java.nio.charset.IllegalCharsetNameException;
import java.nio.charset.StandardCharsets;
import java.nio.charset.UnsupportedCharsetException;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import trimwright.ingest.csv.CsvColumn;
import trimwright.ingest.csv.CsvMapping;
import trimwright.ingest.csv.CsvSelector;
import trimwright.ingest.csv.CsvTimeFormat;
import trimwright.ingest.csv.CsvUnit;
import trimwright.keyfile.Fault;
import trimwright.keyfile.NearName;
import trimwright.keyfile.Values;
import trimwright.text.Texts;
import trimwright.track.Paths;

/** From the keys of a mapping file to the mapping, with the faults that only several keys together show. */
final class MappingLoader {
    /** Paths that are not known must begin with this, so that a slip of the finger does not make a new channel. */
    private static final String OWN = "extra.";

    private final Values values;
    private final List<Fault> faults = new ArrayList<>();

    MappingLoader(Values values) {
        this.values = values;
    }

    List<Fault> faults() {
        return faults;
    }

    /** Null where there are faults. */
    @Nullable
    MappingFile load() {
        Charset encoding = charset();
        char delimiter = delimiter();
        char point = point();
        ZoneId zone = zone();
        String format = values.getText("time.format");
        CsvTimeFormat time = CsvTimeFormat.find(format, zone);
        if (time == null) {
            faults.add(values.fault("time.format", Texts.of("intake.map.time_format", format)));
        } else if (time.isTimeOfDay() && !zone.getRules().isFixedOffset()) {
            faults.add(values.fault("time.zone", Texts.of("intake.map.zone_needs_date", zone)));
        }
        int header = values.findNumber("header_row") == null ? 1 : values.count("header_row");
        int skip = values.findNumber("skip_rows") == null ? header : values.count("skip_rows");
        if (skip < header) {
            faults.add(values.fault("skip_rows", Texts.of("intake.map.skip_rows", skip, header)));
        }
        List<CsvSelector> timeColumns = values.list("time.column").stream()
                .map(row -> selector(row, "name", "index", header))
                .toList();
        if (timeColumns.isEmpty() || timeColumns.size() > 2) {
            faults.add(values.fault("time.format", Texts.of("intake.map.time_columns", timeColumns.size())));
        }
        CsvSelector boat = values.findText("boat.name") == null && values.findNumber("boat.index") == null
                ? null
                : selector(values, "boat.name", "boat.index", header);
        List<CsvColumn> columns = columns(header);
        if (columns.isEmpty() && faults.isEmpty()) {
            faults.add(new Fault(0, "column", Texts.of("intake.map.no_columns")));
        }
        if (!faults.isEmpty()) {
            return null;
        }
        String group = values.findText("group");
        String suffix = values.findText("boat_file_suffix");
        CsvMapping.TextForm text = new CsvMapping.TextForm(
                isSixteenBit(encoding) ? StandardCharsets.UTF_8 : encoding,
                delimiter,
                point,
                group == null ? "csv" : group);
        return new MappingFile(
                new CsvMapping(text, header, skip, timeColumns, format, zone, boat, columns),
                encoding,
                suffix == null ? "" : suffix);
    }

    /** Whether the encoding must be turned into UTF-8 before it is read. */
    static boolean isSixteenBit(Charset charset) {
        return charset.name().startsWith("UTF-16") || charset.name().startsWith("UTF-32");
    }

    private Charset charset() {
        String name = values.findText("encoding");
        try {
            return name == null ? StandardCharsets.UTF_8 : Charset.forName(name);
        } catch (IllegalCharsetNameException | UnsupportedCharsetException e) {
            faults.add(values.fault("encoding", Texts.of("intake.map.encoding", String.valueOf(name))));
            return StandardCharsets.UTF_8;
        }
    }

    private char delimiter() {
        String text = values.findText("delimiter");
        if (text == null) {
            return ',';
        }
        return switch (text) {
            case ",", ";", "|", ":" -> text.charAt(0);
            case "tab", "\t" -> '\t';
            case "space" -> ' ';
            default -> {
                faults.add(values.fault("delimiter", Texts.of("intake.map.delimiter", text)));
                yield ',';
            }
        };
    }

    private char point() {
        String text = values.findText("decimal");
        if (text == null || text.equals(".") || text.equals(",")) {
            return text == null ? '.' : text.charAt(0);
        }
        faults.add(values.fault("decimal", Texts.of("intake.map.decimal", text)));
        return '.';
    }

    private ZoneId zone() {
        String text = values.findText("time.zone");
        try {
            return text == null ? ZoneId.of("UTC") : ZoneId.of(text);
        } catch (DateTimeException e) {
            faults.add(values.fault("time.zone", Texts.of("intake.map.zone", String.valueOf(text))));
            return ZoneId.of("UTC");
        }
    }

    private CsvSelector selector(Values row, String name, String index, int header) {
        String text = row.findText(name);
        boolean byIndex = row.findNumber(index) != null;
        if ((text == null) != byIndex) {
            faults.add(row.fault(name, Texts.of("intake.map.name_or_index")));
        } else if (text != null && header == 0) {
            faults.add(row.fault(name, Texts.of("intake.map.no_header", text)));
        }
        return byIndex ? CsvSelector.at(row.count(index)) : CsvSelector.named(String.valueOf(text));
    }

    private List<CsvColumn> columns(int header) {
        List<CsvColumn> columns = new ArrayList<>();
        Set<String> taken = new HashSet<>();
        for (Values row : values.list("column")) {
            CsvSelector selector = selector(row, "name", "index", header);
            String channel = row.getText("channel");
            if (!Paths.all().contains(channel) && !channel.startsWith(OWN)) {
                String near = NearName.find(channel, List.copyOf(Paths.all()));
                faults.add(row.fault(
                        "channel",
                        near == null
                                ? Texts.of("intake.map.channel", channel)
                                : Texts.of("intake.map.channel_near", channel, near)));
            } else if (!taken.add(channel)) {
                faults.add(row.fault("channel", Texts.of("intake.map.channel_twice", channel)));
            }
            CsvUnit unit = CsvUnit.find(row.getText("unit"));
            if (unit == null) {
                faults.add(row.fault(
                        "unit",
                        Texts.of("intake.map.unit", row.getText("unit"), String.join(", ", CsvUnit.symbols()))));
                continue;
            }
            CsvColumn.Sense sense = row.isSet("negate") ? CsvColumn.Sense.OPPOSITE : CsvColumn.Sense.SAME;
            columns.add(new CsvColumn(selector, channel, unit, sense));
        }
        return columns;
    }
}
