package trimwright.boatfile;

import trimwright.boat.Boat;

/**
 * A boat and the file that described it.
 *
 * @param boat the boat, checked
 * @param text the file as it stands
 * @param hash first 16 hexadecimal digits of the SHA-256 of the file's bytes: names the file in every result
 */
public record BoatFile(Boat boat, String text, String hash) {}
