package org.limedry.wall;

import java.util.List;

/** Where the nodes of each layer of a wall stand: the grid of sites, or a finer one for tabulated materials. */
final class Layout {
    private final WallPlan plan;
    private final double gridFactor;

    Layout(WallPlan plan, double gridFactor) {
        this.plan = plan;
        this.gridFactor = gridFactor;
    }

    /** Returns the links of one layer that is there from the start, m. */
    double[] layer(int index) {
        if (plan.isTabulated()) {
            return graded(index);
        }
        boolean innermost = index == plan.startLayers().size() - 1;
        Grid.End start = index == 0 ? outerEnd(plan.outside()) : Grid.End.OUTER;
        double thicknessM = plan.layers().get(index).thicknessM();
        return Grid.layer(thicknessM, gridFactor, start, innermost ? Grid.End.FACE : Grid.End.OUTER);
    }

    /**
     * Returns the links of a coat or a later layer, m.
     *
     * @param index its place among all layers
     * @param thicknessM its thickness, m
     */
    double[] laid(int index, double thicknessM) {
        return plan.isTabulated() ? graded(index) : Grid.coat(thicknessM, gridFactor);
    }

    /** Returns how many links the wall has when all its layers are laid. */
    int links() {
        int count = 0;
        for (int layer = 0; layer < plan.layers().size(); layer++) {
            count += layer(layer).length;
        }
        return count;
    }

    private double[] graded(int index) {
        LayerPlan layer = plan.layers().get(index);
        boolean innermost = index == plan.layers().size() - 1;
        Grid.End start = index == 0 ? gradedEnd(plan.outside()) : Grid.End.OUTER;
        Grid.End end = innermost ? gradedEnd(plan.inside()) : Grid.End.OUTER;
        double[] links = Grid.graded(layer.thicknessM(), gridFactor, start, end);
        List<Double> places = layer.nodesM().stream()
                .filter(place -> place > 0.0 && place < layer.thicknessM())
                .toList();
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
