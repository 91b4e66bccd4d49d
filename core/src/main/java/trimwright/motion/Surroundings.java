package trimwright.motion;

import trimwright.water.WaterMotion;

/** What a boat meets at one instant: the air where she is, and the water about her. */
public record Surroundings(LocalWind wind, WaterMotion water) {}
