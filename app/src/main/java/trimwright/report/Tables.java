package trimwright.report;

import java.util.List;
import trimwright.text.Texts;

/** Tables of a page: a head from the bundle, cells cut at bars, figures to the right. */
final class Tables {
    private static final java.util.regex.Pattern FIGURE = java.util.regex.Pattern.compile("[-+<>]?[0-9].*|-");

    private Tables() {}

    /** @param head key of the heads, cut at bars */
    static void put(Html page, String head, List<List<String>> rows) {
        String[] heads = Texts.of(head).split("\\|", -1);
        page.in(
                "div",
                () -> page.in("table", () -> {
                    page.in(
                            "thead",
                            () -> page.in("tr", () -> {
                                for (int i = 0; i < heads.length; i++) {
                                    page.put("th", heads[i], "scope", "col", "class", isFigure(rows, i) ? "n" : "");
                                }
                            }));
                    page.in(
                            "tbody",
                            () -> rows.forEach(row -> page.in("tr", () -> {
                                for (int i = 0; i < row.size(); i++) {
                                    page.put("td", row.get(i), "class", isFigure(rows, i) ? "n" : "");
                                }
                            })));
                }),
                "class",
                "wide");
    }

    private static boolean isFigure(List<List<String>> rows, int column) {
        return rows.stream().allMatch(row -> FIGURE.matcher(row.get(column)).matches());
    }
}
