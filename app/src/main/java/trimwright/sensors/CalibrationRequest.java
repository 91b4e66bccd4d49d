package trimwright.sensors;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import trimwright.boat.WingSpec;
import trimwright.boatfile.BoatFile;
import trimwright.calibration.Calibration;
import trimwright.calibration.Calibrations;
import trimwright.dock.DockOffset;
import trimwright.store.DockChecks;
import trimwright.store.SessionInfo;
import trimwright.text.JsonOut;
import trimwright.text.Texts;
import trimwright.text.UserInputException;
import trimwright.track.BoatTrack;
import trimwright.units.Units;
import trimwright.wind.SailedWind;
import trimwright.wind.SessionClock;
import trimwright.wind.WindOptions;

/**
 * A calibration that is asked for: always of the session's channels as they were recorded, whatever was accepted before.
 *
 * @param file boat file, or null: upwash then goes by the wind alone
 * @param wing that the boats carry, or null
 * @param tracks all boats of the session
 * @param dock the last dock check of each boat that was kept with the session
 */
public record CalibrationRequest(
        SessionInfo session,
        @Nullable BoatFile file,
        @Nullable WingSpec wing,
        List<BoatTrack> tracks,
        DockChecks dock) {
    private static final WindOptions AS_LOGGED =
            new WindOptions(WindOptions.DEFAULT.longestGap(), null, WindOptions.Sensors.AS_LOGGED);

    public CalibrationRequest {
        tracks = List.copyOf(tracks);
    }

    /** One answer a boat, in the order of the session. */
    public List<Calibration> solve() {
        long from = tracks.stream().mapToLong(BoatTrack::startNanos).min().orElseThrow(this::empty);
        long to = tracks.stream().mapToLong(BoatTrack::endNanos).max().orElseThrow(this::empty);
        int rate = tracks.stream().mapToInt(SailedWind::rateOf).max().orElseThrow(this::empty);
        if ((to - from) / 1e9 * rate >= SessionClock.LARGEST_SIZE) {
            throw new UserInputException(Texts.of("debrief.too_long", (to - from) / 86_400e9, rate));
        }
        SessionClock clock = SessionClock.covering(from, to, rate);
        BoatFile described = file;
        return Calibrations.of(tracks.parallelStream()
                .map(track -> new Calibrations.Given(
                        SailedWind.of(track, clock, described == null ? null : described.boat(), AS_LOGGED),
                        described == null ? null : described.boat(),
                        wing,
                        beforehand(track.boat())))
                .toList());
    }

    private UserInputException empty() {
        return new UserInputException(Texts.of("debrief.no_boats"));
    }

    /** What the boat's last dock check says; nothing where it is of another form. */
    private List<DockOffset> beforehand(String boat) {
        String text = dock.findLast(boat);
        List<DockOffset> offsets = new ArrayList<>();
        if (text != null) {
            for (JsonNode node : JsonOut.read(text).path("prior")) {
                for (DockOffset.Quantity quantity : DockOffset.Quantity.values()) {
                    boolean isIt = node.path("quantity")
                            .asText()
                            .equals(quantity.name().toLowerCase(Locale.ROOT));
                    if (isIt && node.path("offset_deg").isNumber()) {
                        Function<String, Double> angle =
                                key -> Units.fromDegrees(node.path(key).asDouble());
                        offsets.add(
                                new DockOffset(quantity, angle.apply("offset_deg"), angle.apply("standard_error_deg")));
                    }
                }
            }
        }
        return offsets;
    }
}
