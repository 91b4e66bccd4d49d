package trimwright.coursefile;

import java.util.List;
import java.util.Set;
import trimwright.keyfile.Key;
import trimwright.keyfile.KeyTable;

/** All keys of a course file; reader, checker, writer and docs/formats.md share this table. */
public final class CourseKeys {
    static final String SCHEMA = "course/1";

    public static final KeyTable TABLE = new KeyTable(
            SCHEMA,
            List.of(
                    Key.text("name", "what people call the race"),
                    Key.text("gun_utc", "start signal: 2027-03-06T13:00:00Z"),
                    Key.text(
                            "order",
                            "ids of marks and gates as they are sailed, with commas; the last leg ends at the finish"),
                    latitude("start.port_lat_deg", "start line, left end for a boat that starts"),
                    longitude("start.port_lon_deg"),
                    latitude("start.starboard_lat_deg", "its right end"),
                    longitude("start.starboard_lon_deg"),
                    latitude("finish.port_lat_deg", "finish line, left end for a boat that finishes"),
                    longitude("finish.port_lon_deg"),
                    latitude("finish.starboard_lat_deg", "its right end"),
                    longitude("finish.starboard_lon_deg"),
                    Key.text("mark[].id", "name in the order"),
                    latitude("mark[].lat_deg", "where it lies, WGS 84, north positive"),
                    longitude("mark[].lon_deg"),
                    Key.text("mark[].leave", "side of the boat on which it is left: port or starboard"),
                    Key.text("gate[].id", "name in the order; a boat passes between its marks and rounds either"),
                    latitude("gate[].port_lat_deg", "left mark for a boat that comes to the gate"),
                    longitude("gate[].port_lon_deg"),
                    latitude("gate[].starboard_lat_deg", "its right mark"),
                    longitude("gate[].starboard_lon_deg"),
                    latitude("boundary[].lat_deg", "corner of the area that must not be left, in order round it"),
                    longitude("boundary[].lon_deg")),
            Set.of("mark[]", "gate[]", "boundary[]"));

    private CourseKeys() {}

    private static Key latitude(String path, String meaning) {
        return Key.number(path, -89, 89, meaning);
    }

    private static Key longitude(String path) {
        return Key.number(path, -180, 180, "and its longitude, east positive");
    }
}
