package org.limedry.simulation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.limedry.lime.MouldIndex;
import org.limedry.material.Catalogue;
import org.limedry.simulation.Spells.Step;
import org.limedry.simulation.Warning.Kind;
import org.limedry.wall.LayerPlan;
import org.limedry.wall.WallColumn;

/**
 * Looks out for mould on bare timber and old paint. Plaster and laths in it are alkaline and not looked at; nor is wallpaper,
 * which no site file describes.
 */
final class MouldWatch {
    private static final Set<String> FEEDS_MOULD = Set.of(Catalogue.SOFTWOOD, Catalogue.OLD_PAINT);

    private final Map<FaceBook, MouldIndex> indices = new HashMap<>();

    /** Looks at the faces after a step. */
    void take(List<FaceBook> faces, Step step, Spells spells) {
        for (FaceBook face : faces) {
            if (feedsMould(face)) {
                MouldIndex index = indices.getOrDefault(face, MouldIndex.clean())
                        .after(face.celsius(), Math.max(0.0, face.relativeHumidity()), step.hours());
                indices.put(face, index);
                if (index.index() >= MouldIndex.BEGUN) {
                    spells.note(Kind.MOULD, face.column().plan().name(), step, index.index(), Math::max);
                }
            }
        }
    }

    private static boolean feedsMould(FaceBook face) {
        WallColumn column = face.column();
        List<LayerPlan> layers = column.plan().layers();
        boolean inner = face.face().isInner();
        boolean covered = inner && column.coats() > 0;
        LayerPlan outermost = layers.get(inner ? layers.size() - 1 : 0);
        return !covered && FEEDS_MOULD.contains(outermost.material().name());
    }
}
