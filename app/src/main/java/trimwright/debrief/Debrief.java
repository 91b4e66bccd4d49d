package trimwright.debrief;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import trimwright.calibration.Corrected;
import trimwright.calibration.Correction;
import trimwright.calibration.Unknown;
import trimwright.compare.Comparison;
import trimwright.compare.OwnBestReference;
import trimwright.compare.Reference;
import trimwright.compare.TargetReference;
import trimwright.fleet.FleetFindings;
import trimwright.platform.Platform;
import trimwright.segment.Cutting;
import trimwright.segment.FoilingRule;
import trimwright.segment.OnCourse;
import trimwright.segment.Pieces;
import trimwright.segment.SailedCourse;
import trimwright.target.TargetBook;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;
import trimwright.track.Channel;
import trimwright.track.ChannelGroup;
import trimwright.track.ChannelSummary;
import trimwright.wind.Quantity;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.WindAgreement;
import trimwright.wind.WindCorrection;
import trimwright.wind.WindOptions;
import trimwright.wind.WindTrack;

/** Debriefs a session: all boats on one clock, each against its reference, with a course among the others. */
public final class Debrief {
    private Debrief() {}

    /**
     * The debrief of those tracks, each with samples.
     *
     * @throws UserInputException where there is nothing to debrief, or the time stamps span more than a session can
     */
    public static DebriefReport of(List<BoatTrack> logged, DebriefOptions options) {
        List<BoatTrack> tracks =
                logged.stream().map(track -> calibrated(track, options)).toList();
        SessionClock clock = clock(tracks);
        // Each pass takes boats by themselves; the order of the result is that of the tracks on any number of threads.
        List<WindTrack> winds = winds(tracks, clock, options);
        List<@Nullable OnCourse> courses = FleetOnCourse.of(winds, options);
        List<Cut> cuts = IntStream.range(0, tracks.size())
                .parallel()
                .mapToObj(i -> cut(winds.get(i), courses.get(i), options))
                .toList();
        LossModel losses = LossModel.of(cuts, options);
        TargetBook book = options.book();
        TargetBook learned = options.learned();
        Reference targets = book == null
                ? null
                : learned == null
                        ? new TargetReference(book.withoutCosts())
                        : TargetReference.learned(learned.withoutCosts());
        List<BoatDebrief> boats = IntStream.range(0, tracks.size())
                .parallel()
                .mapToObj(i -> judge(tracks.get(i), cuts.get(i), targets, losses, options))
                .toList();
        FleetFindings fleet =
                FleetFindings.of(winds, cuts.stream().map(Cut::pieces).toList());
        return new DebriefReport(
                clock, options.course(), boats, fleet, theirs(fleet, boats, losses, options), List.of());
    }

    private static BoatTrack calibrated(BoatTrack track, DebriefOptions options) {
        Correction correction = taken(track, options);
        return correction == null ? track : Corrected.of(track, correction, options.boat());
    }

    /** Wind as logged means as logged. */
    private static @Nullable Correction taken(BoatTrack track, DebriefOptions options) {
        return options.wind().sensors() == WindOptions.Sensors.AS_LOGGED ? null : options.findCorrection(track.boat());
    }

    /** A boat whose wind angle and upwash are known is not made to agree with the others. */
    private static boolean isSettled(BoatTrack track, DebriefOptions options) {
        Correction correction = taken(track, options);
        return correction != null && correction.has(Unknown.WIND_ANGLE) && correction.has(Unknown.UPWASH);
    }

    private static List<TheirTrim> theirs(
            FleetFindings fleet, List<BoatDebrief> boats, LossModel losses, DebriefOptions options) {
        TargetBook book = options.book();
        Platform platform = losses.platform();
        return book == null || platform == null ? List.of() : TheirTrim.of(fleet, boats, platform, book);
    }

    private static List<WindTrack> winds(List<BoatTrack> tracks, SessionClock clock, DebriefOptions options) {
        List<WindTrack> logged = tracks.parallelStream()
                .map(track -> SailedWind.of(track, clock, options.boat(), wind(track, options)))
                .toList();
        if (options.wind().sensors() == WindOptions.Sensors.AS_LOGGED) {
            return logged;
        }
        List<WindCorrection> corrections = WindAgreement.of(logged);
        return IntStream.range(0, tracks.size())
                .parallel()
                .mapToObj(i -> corrections.get(i).isNone() || isSettled(tracks.get(i), options)
                        ? logged.get(i)
                        : SailedWind.of(tracks.get(i), clock, options.boat(), options.wind(), corrections.get(i)))
                .toList();
    }

    private static WindOptions wind(BoatTrack track, DebriefOptions options) {
        WindOptions wind = options.wind();
        return isSettled(track, options)
                ? new WindOptions(wind.longestGap(), wind.speed(), WindOptions.Sensors.CALIBRATED)
                : wind;
    }

    private static SessionClock clock(List<BoatTrack> tracks) {
        long from = Long.MAX_VALUE;
        long to = Long.MIN_VALUE;
        int rate = 1;
        for (BoatTrack track : tracks) {
            if (track.groups().stream().allMatch(group -> group.size() == 0)) {
                throw new UserInputException(Texts.of("debrief.no_samples", track.boat()));
            }
            from = Math.min(from, track.startNanos());
            to = Math.max(to, track.endNanos());
            rate = Math.max(rate, SailedWind.rateOf(track));
        }
        if (tracks.isEmpty()) {
            throw new UserInputException(Texts.of("debrief.no_boats"));
        }
        double seconds = (to - from) / 1e9;
        if (seconds * rate >= SessionClock.LARGEST_SIZE) {
            throw new UserInputException(Texts.of("debrief.too_long", seconds / 86_400, rate));
        }
        return SessionClock.covering(from, to, rate);
    }

    /** A boat's track cut into pieces, before it is judged. */
    record Cut(WindTrack wind, @Nullable OnCourse on, FoilingRule foiling, Pieces pieces) {}

    private static Cut cut(WindTrack wind, @Nullable OnCourse on, DebriefOptions options) {
        FoilingRule foiling = foiling(wind, options.book());
        return new Cut(wind, on, foiling, Cutting.of(wind, foiling, on));
    }

    private static BoatDebrief judge(
            BoatTrack track, Cut cut, @Nullable Reference targets, LossModel losses, DebriefOptions options) {
        WindTrack wind = cut.wind();
        Pieces pieces = cut.pieces();
        Reference reference = targets == null ? OwnBestReference.of(wind, pieces.phases()) : targets;
        return new BoatDebrief(
                wind,
                cut.on(),
                startShare(wind, cut.on(), reference),
                cut.foiling(),
                pieces,
                Comparison.of(wind, pieces, reference, losses.of(cut)),
                losses.aims(cut),
                quality(track),
                taken(track, options));
    }

    private static @Nullable Double startShare(WindTrack wind, @Nullable OnCourse on, Reference reference) {
        SailedCourse.Start start = on == null ? null : on.sailed().start();
        double share = start != null && reference instanceof TargetReference target
                ? target.shareOfTarget(wind, start.gun())
                : Double.NaN;
        return Double.isNaN(share) ? null : share;
    }

    /** By ride height if it is logged, else by the slowest speed at which the book has the boat foiling. */
    private static FoilingRule foiling(WindTrack wind, @Nullable TargetBook book) {
        if (wind.has(Quantity.RIDE_HEIGHT)) {
            return FoilingRule.ByRideHeight.DEFAULT;
        }
        if (book == null) {
            return new FoilingRule.NotTold();
        }
        FoilingRule.BySpeed rule = FoilingRule.BySpeed.above(book.slowestFoiling());
        return rule == null ? new FoilingRule.NotTold() : rule;
    }

    private static List<ChannelSummary> quality(BoatTrack track) {
        List<ChannelSummary> summaries = new ArrayList<>();
        for (ChannelGroup group : track.groups()) {
            for (Channel channel : group.channels()) {
                summaries.add(ChannelSummary.of(group, channel, track.startNanos(), track.endNanos()));
            }
        }
        summaries.sort(Comparator.comparing(ChannelSummary::path));
        return summaries;
    }
}
