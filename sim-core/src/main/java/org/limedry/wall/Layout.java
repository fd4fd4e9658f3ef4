package org.limedry.wall;

import java.util.ArrayList;
import java.util.List;

/** Where the nodes of each layer of a wall stand, by the meshing of its plan. */
final class Layout {
    private static final double SAME_M = 1.0e-9;

    private final WallPlan plan;
    private final double gridFactor;

    Layout(WallPlan plan, double gridFactor) {
        this.plan = plan;
        this.gridFactor = gridFactor;
    }

    /** Returns the links of one layer of the wall as the run begins, m. */
    double[] layer(int index) {
        double thicknessM = plan.layers().get(index).thicknessM();
        boolean innermost = index == plan.layers().size() - 1;
        if (plan.meshing() instanceof Meshing.Graded graded) {
            Grid.End start = index == 0 ? gradedEnd(plan.outside()) : Grid.End.OUTER;
            Grid.End faced = plan.later().isEmpty() ? gradedEnd(plan.inside()) : Grid.End.OUTER;
            return graded(graded, thicknessM, depthM(index), start, innermost ? faced : Grid.End.OUTER);
        }
        Grid.End start = index == 0 ? outerEnd(plan.outside()) : Grid.End.OUTER;
        return Grid.layer(thicknessM, gridFactor, start, innermost ? Grid.End.FACE : Grid.End.OUTER);
    }

    /**
     * Returns the links of a coat or a later layer, m.
     *
     * @param thicknessM its thickness, m
     * @param depthM depth of its outer end, m
     */
    double[] laid(double thicknessM, double depthM) {
        if (!(plan.meshing() instanceof Meshing.Graded graded)) {
            return Grid.coat(thicknessM, gridFactor);
        }
        double wholeM = depthM(plan.layers().size())
                + plan.later().stream()
                        .mapToDouble(later -> later.layer().thicknessM())
                        .sum();
        boolean covered = depthM + thicknessM < wholeM - SAME_M;
        return graded(graded, thicknessM, depthM, Grid.End.OUTER, covered ? Grid.End.OUTER : gradedEnd(plan.inside()));
    }

    /** Returns how many links the wall will have when all is laid. */
    int links() {
        int count = 0;
        for (int layer = 0; layer < plan.layers().size(); layer++) {
            count += layer(layer).length;
        }
        double depthM = depthM(plan.layers().size());
        for (LaterLayer later : plan.later()) {
            count += laid(later.layer().thicknessM(), depthM).length;
            depthM += later.layer().thicknessM();
        }
        return count;
    }

    private double depthM(int layer) {
        return plan.layers().stream()
                .limit(layer)
                .mapToDouble(LayerPlan::thicknessM)
                .sum();
    }

    private double[] graded(Meshing.Graded graded, double thicknessM, double depthM, Grid.End start, Grid.End end) {
        double[] links = Grid.graded(thicknessM, gridFactor, start, end);
        List<Double> places = new ArrayList<>();
        for (double asked : graded.depthsM()) {
            if (asked > depthM && asked < depthM + thicknessM) {
                places.add(asked - depthM);
            }
        }
        Grid.moveNodes(links, places);
        return links;
    }

    private static Grid.End outerEnd(Side outside) {
        if (outside instanceof Side.Sealed || outside instanceof Side.Soil) {
            return Grid.End.STILL;
        }
        return outside instanceof Side.Room ? Grid.End.FACE : Grid.End.OUTER;
    }

    private static Grid.End gradedEnd(Side side) {
        return side instanceof Side.Sealed || side instanceof Side.Soil ? Grid.End.STILL : Grid.End.FACE;
    }
}
