package trimwright.segment;

import org.jspecify.annotations.Nullable;
import trimwright.boat.Antenna;
import trimwright.course.LocalPlane;
import trimwright.course.PlanePoint;
import trimwright.course.Position;
import trimwright.wind.Quantity;
import trimwright.wind.WindTrack;

/** Where the bow of a boat was at each instant of the session clock, in the plane of the course. */
public final class BowTrack {
    private final @Nullable PlanePoint[] places;

    private BowTrack(@Nullable PlanePoint[] places) {
        this.places = places;
    }

    /** @param antenna where position is measured; null: at the bow */
    public static BowTrack of(WindTrack track, LocalPlane plane, @Nullable Antenna antenna) {
        double ahead = antenna == null ? 0 : antenna.aftOfBow();
        double right = antenna == null ? 0 : -antenna.starboard();
        @Nullable PlanePoint[] places = new PlanePoint[track.size()];
        for (int i = 0; i < places.length; i++) {
            double latitude = track.get(Quantity.LATITUDE, i);
            double longitude = track.get(Quantity.LONGITUDE, i);
            double heading = track.get(Quantity.HEADING, i);
            if (Double.isNaN(latitude) || Double.isNaN(longitude) || Double.isNaN(heading)) {
                continue;
            }
            double cos = StrictMath.cos(heading);
            double sin = StrictMath.sin(heading);
            places[i] = plane.toPlane(new Position(latitude, longitude))
                    .plus(ahead * cos - right * sin, ahead * sin + right * cos);
        }
        return new BowTrack(places);
    }

    /** The bow at an instant, null where position or heading is missing. */
    public @Nullable PlanePoint at(int i) {
        return places[i];
    }

    /** Number of instants. */
    public int size() {
        return places.length;
    }
}
