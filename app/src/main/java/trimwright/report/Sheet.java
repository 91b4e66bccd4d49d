package trimwright.report;

import java.util.List;

/** What every page has: head, style, and how each boat is drawn. */
final class Sheet {
    private static final String STYLE = """
            body { font: 15px/1.45 system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "DejaVu Sans", sans-serif;
              color: #16202b; background: #ffffff; max-width: 1000px; margin: 0 auto; padding: 16px 20px 40px; }
            h1 { font-size: 26px; line-height: 1.2; margin: 8px 0 2px; }
            h2 { font-size: 19px; margin: 30px 0 8px; border-top: 1px solid #d8dcdf; padding-top: 12px; }
            h3 { font-size: 15px; margin: 14px 0 4px; }
            .sub, .note { color: #566270; }
            .note { font-size: 13px; max-width: 90ch; }
            .caution { background: #fdf6e3; border-left: 4px solid #e69f00; padding: 8px 12px; margin: 14px 0; }
            .wide { overflow-x: auto; }
            table { border-collapse: collapse; font-size: 13px; font-variant-numeric: tabular-nums; margin: 6px 0; }
            th, td { text-align: left; padding: 3px 10px 3px 0; border-bottom: 1px solid #e6e9eb; vertical-align: top; }
            th { font-weight: 600; color: #566270; }
            td.n { text-align: right; white-space: nowrap; }
            th.n { text-align: right; }
            svg { width: 100%; height: auto; margin: 6px 0; }
            svg text { font-size: 12px; fill: #16202b; }
            svg .boat { fill: none; stroke-width: 1.3; }
            svg .line, svg .boundary { fill: none; stroke: #566270; stroke-width: 1.5; }
            svg .boundary { stroke-dasharray: 4 4; stroke: #8a949e; }
            svg .mark { fill: #ffffff; stroke: #16202b; stroke-width: 1.5; }
            svg .grid { stroke: #e6e9eb; }
            details { margin: 6px 0; }
            summary { cursor: pointer; font-weight: 600; }
            svg.key { width: 44px; height: 12px; margin: 0 6px 0 0; }
            .keys span { margin-right: 18px; white-space: nowrap; }
            footer { margin-top: 30px; color: #566270; font-size: 13px; border-top: 1px solid #d8dcdf; padding-top: 8px; }
            @media print {
              body { max-width: none; padding: 0; font-size: 12px; }
              table { font-size: 10.5px; }
              .wide { overflow: visible; }
              h2, h3 { break-after: avoid; }
              svg, tr { break-inside: avoid; }
              details::details-content { content-visibility: visible; block-size: auto; }
            }
            """;

    private Sheet() {}

    static void put(Html page, String title, Html.Inside body) {
        page.in(
                "html",
                () -> {
                    page.in("head", () -> {
                        page.alone("meta", "charset", "utf-8");
                        page.alone("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
                        page.put("title", title);
                        page.put("style", STYLE);
                    });
                    page.in("body", body);
                },
                "lang",
                "en");
    }

    /** A stroke and a name for each boat. */
    static void keys(Html page, List<String> boats) {
        page.in(
                "p",
                () -> {
                    for (int place = 0; place < boats.size(); place++) {
                        key(page, BoatInk.of(place), boats.get(place));
                    }
                },
                "class",
                "keys");
    }

    private static void key(Html page, BoatInk ink, String boat) {
        page.in("span", () -> {
            page.in(
                    "svg",
                    () -> stroke(page, ink),
                    "class",
                    "key",
                    "width",
                    "44",
                    "height",
                    "12",
                    "aria-hidden",
                    "true");
            page.say(boat);
        });
    }

    private static void stroke(Html page, BoatInk ink) {
        page.alone(
                "line",
                "x1",
                "0",
                "y1",
                "6",
                "x2",
                "44",
                "y2",
                "6",
                "stroke",
                ink.colour(),
                "stroke-width",
                "2.5",
                "stroke-dasharray",
                ink.dash());
    }
}
