package trimwright.prepare;

import java.util.ArrayList;
import java.util.List;
import trimwright.boat.WingSpec;
import trimwright.target.TrimSetting;
import trimwright.wing.Wing;
import trimwright.wing.WingSetting;

/**
 * A place along the span where the wing is drawn.
 *
 * @param height above the foot (m)
 * @param flapAngle to the main element (rad), tack-free
 */
public record WingCut(double height, double flapAngle) {
    /** At those of the {@link WingDocument#STRIPS} strips of {@code wing/1}, counted from the foot. */
    public static List<WingCut> atStrips(WingSpec spec, TrimSetting trim, int... strips) {
        Wing wing = Wing.of(spec, WingDocument.STRIPS);
        WingSetting setting = setting(trim);
        List<WingCut> cuts = new ArrayList<>();
        for (int strip : strips) {
            cuts.add(new WingCut(wing.stripHeight(strip), setting.flapAngle(wing.flapShare(strip))));
        }
        return cuts;
    }

    /** At the foot, half height and the head, of a flap that twists evenly. */
    public static List<WingCut> ofThree(WingSpec spec, TrimSetting trim) {
        WingSetting setting = setting(trim);
        return List.of(
                new WingCut(0, setting.flapAngle(0)),
                new WingCut(spec.span() / 2, setting.flapAngle(0.5)),
                new WingCut(spec.span(), setting.flapAngle(1)));
    }

    private static WingSetting setting(TrimSetting trim) {
        return new WingSetting(trim.sheet(), trim.camber(), trim.twist(), trim.twistMidRatio());
    }
}
