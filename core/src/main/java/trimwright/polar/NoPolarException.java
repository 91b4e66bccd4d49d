package trimwright.polar;

import trimwright.profile.WingProfile;

/** No flow was found about a section even where it is easy, so there is nothing to make a table of. */
public final class NoPolarException extends RuntimeException {
    private static final long serialVersionUID = 1;

    NoPolarException(WingProfile profile, double reynolds) {
        super("no flow found about a section with main element " + profile.mainThickness() + " thick, slot "
                + profile.slotLength() + ", Reynolds number " + reynolds);
    }
}
