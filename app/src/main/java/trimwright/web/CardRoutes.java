package trimwright.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.cards.CardSide;
import trimwright.cards.CardSides;
import trimwright.cards.GustDocument;
import trimwright.cards.GustRequest;
import trimwright.cards.GustRun;
import trimwright.cards.HandlingOf;
import trimwright.cards.LoadDocument;
import trimwright.cards.LoadRequest;
import trimwright.cards.LoadRun;
import trimwright.cards.TakeOffDocument;
import trimwright.cards.TakeOffRequest;
import trimwright.cards.TakeOffRun;
import trimwright.cards.TrimCard;
import trimwright.cards.TrimCardDocument;
import trimwright.cards.TrimCardPdf;
import trimwright.cards.TrimCardRequest;
import trimwright.prepare.Sections;
import trimwright.prepare.TargetRequest;
import trimwright.target.TargetBook;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.units.Units;

/**
 * Cards of a boat and wing, from the target book of the page: gusts, loads, take-off, and the trim card to print. As the commands say
 * them, in winds of the default grid.
 */
final class CardRoutes implements Routes {
    /** Chosen: a race day of looking about in one book. */
    private static final int KEPT = 60;

    /** Gusts and lulls (kn): those of the command. */
    private static final List<Double> CHANGES_KN = List.of(-4.0, -2.0, 2.0, 4.0, 6.0);

    /** Winds up to this (kn) are light enough to ask whether to foil. */
    private static final double LIGHT_KN = 12;

    private final BoatShelf boats;
    private final TargetShelf targets;
    private final Clock clock;
    private final BackgroundWork<MadeDocument> work = new BackgroundWork<>(KEPT);

    /** @param clock gives the day that stands on a printed card */
    CardRoutes(BoatShelf boats, TargetShelf targets, Clock clock) {
        this.boats = boats;
        this.targets = targets;
        this.clock = clock;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get("/api/gust", ctx -> answer(ctx, this::gust));
        routes.get("/api/loads", ctx -> answer(ctx, this::loads));
        routes.get("/api/takeoff", ctx -> answer(ctx, this::takeOff));
        routes.get("/api/card", this::cardPage);
        routes.get("/api/card.pdf", this::cardPdf);
    }

    /** Makes one of the documents. */
    private interface Maker {
        Job of(Context ctx, BoatFile file, WingSpec wing);
    }

    /** Work that may still have to be done. */
    private interface Job {
        ObjectNode run(Sections sections, TargetBook book) throws InterruptedException;
    }

    private void answer(Context ctx, Maker maker) {
        BoatFile file = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(file, Query.text(ctx, "wing"));
        // What is wrong in the question is said before the book is waited for.
        Job job = maker.of(ctx, file, wing);
        Sections sections = targets.sections(file, wing);
        TargetBook book = targets.findBook(ctx, file, wing, sections.source());
        if (book == null) {
            return;
        }
        String key = ctx.path() + "?" + ctx.queryString() + " " + file.hash() + " " + sections.source();
        work.answer(ctx, key, 1, progress -> new MadeDocument(Json.bytes(waitFor(job, sections, book))));
    }

    private static ObjectNode waitFor(Job job, Sections sections, TargetBook book) {
        try {
            return job.run(sections, book).put("section", sections.source().key());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the workbench stops", e);
        }
    }

    private Job gust(Context ctx, BoatFile file, WingSpec wing) {
        double windKn = wind(ctx, "tws_kn");
        @Nullable String angle = ctx.queryParam("twa_deg");
        GustRequest request = new GustRequest(
                file,
                wing,
                HandlingOf.boat(file),
                windKn,
                angle == null ? null : Double.valueOf(Query.number(ctx, "twa_deg", 30, 170)),
                GustRequest.usual(CHANGES_KN.stream()
                        .filter(change -> windKn + change > 0)
                        .toList()));
        return (sections, book) -> GustDocument.of(request, GustRun.of(request, sections, book));
    }

    private Job loads(Context ctx, BoatFile file, WingSpec wing) {
        LoadRequest request = new LoadRequest(
                file,
                wing,
                HandlingOf.boat(file),
                List.of(Units.fromKnots(wind(ctx, "tws_kn"))),
                LoadRequest.USUAL_LAP,
                LoadRequest.USUAL_FITNESS);
        return (sections, book) -> LoadDocument.of(request, LoadRun.of(request, sections, book, done -> {}));
    }

    private Job takeOff(Context ctx, BoatFile file, WingSpec wing) {
        List<Double> light = TargetRequest.defaultGrid().winds().stream()
                .filter(wind -> wind <= Units.fromKnots(LIGHT_KN))
                .toList();
        TakeOffRequest request = new TakeOffRequest(file, wing, light);
        return (sections, book) -> TakeOffDocument.of(request, TakeOffRun.of(request, sections, book, done -> {}));
    }

    private void cardPage(Context ctx) {
        TrimCardRequest request = cardRequest(ctx);
        TargetBook book = targets.findBook(ctx, request.file(), request.wing(), request.section());
        if (book != null) {
            Json.send(ctx, TrimCardDocument.of(request, sides(request, book)));
        }
    }

    private void cardPdf(Context ctx) {
        TrimCardRequest request = cardRequest(ctx);
        TargetBook book = targets.findBook(ctx, request.file(), request.wing(), request.section());
        if (book == null) {
            return;
        }
        String name = request.file().boat().name() + "-" + request.wing().id() + "-card.pdf";
        ctx.header("Content-Disposition", "attachment; filename=\"" + name.replaceAll("[^A-Za-z0-9.-]", "_") + "\"");
        ctx.contentType("application/pdf").result(TrimCardPdf.bytes(request, sides(request, book)));
    }

    private List<TrimCard.Side> sides(TrimCardRequest request, TargetBook book) {
        try {
            return CardSides.of(request, targets.sections(request.file(), request.wing()), book);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the workbench stops", e);
        }
    }

    private TrimCardRequest cardRequest(Context ctx) {
        BoatFile file = boats.get(Query.text(ctx, "boat"));
        WingSpec wing = BoatShelf.getWing(file, Query.text(ctx, "wing"));
        List<Double> winds = Arrays.stream(Query.text(ctx, "tws_kn").split(",", -1))
                .map(CardRoutes::gridWind)
                .map(Units::fromKnots)
                .distinct()
                .sorted()
                .toList();
        if (winds.size() > TrimCardRequest.MOST_WINDS) {
            throw new UserInputException(Texts.of("card.too_many", winds.size(), TrimCardRequest.MOST_WINDS));
        }
        return new TrimCardRequest(
                file,
                wing,
                winds,
                CardSide.listFor(file),
                LocalDate.now(clock),
                Query.turbulence(ctx),
                targets.sections(file, wing).source());
    }

    private static double wind(Context ctx, String name) {
        return gridWind(Query.text(ctx, name));
    }

    /** A wind of the default grid (kn): the page's book has no others. */
    private static double gridWind(String text) {
        for (double wind : TargetRequest.defaultGrid().winds()) {
            double knots = Units.toKnots(wind);
            if (text.matches("\\d{1,2}(\\.0+)?") && Math.abs(Double.parseDouble(text) - knots) < 1e-6) {
                return Double.parseDouble(text);
            }
        }
        throw new UserInputException(Texts.of("web.cards.no_wind", text));
    }
}
