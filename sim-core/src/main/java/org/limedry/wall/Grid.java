package org.limedry.wall;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Distances between neighbouring nodes of a layer: fine at both ends, growing towards the middle.
 *
 * <p>Nodes stand on both ends of every layer, so every link lies in one material.
 */
final class Grid {
    /** Growth of neighbouring links in a wall. */
    private static final double GROWTH = 1.25;

    /** What happens at the end of a layer, which decides how fine its links begin. */
    enum End {
        /** A face that dries or drinks, and on which coats are laid. */
        FACE(0.5e-3),
        /** The weather side, or a contact of two old layers. */
        OUTER(1.0e-3),
        /** Nothing much: a sealed middle, or soil at depth. */
        STILL(Double.POSITIVE_INFINITY);

        private final double firstM;

        End(double firstM) {
            this.firstM = firstM;
        }
    }

    /** Longest link as a share of the layer, so that a thick wall passes the daily wave of warmth, but not below a length. */
    private static final double LONGEST_SHARE = 1.0 / 15.0;

    private static final double LEAST_LONGEST_M = 4.0e-3;

    /** Links of a coat of ordinary grid, and how strongly they crowd to its ends. */
    private static final int COAT_LINKS = 9;

    private static final double COAT_CROWDING = 1.8;

    /** A graded grid: growth, first link of a face, of a contact, share of a layer and of its thickness in one link. */
    private static final double GRADED_GROWTH = 1.12;

    private static final double GRADED_FACE_M = 0.1e-3;
    private static final double GRADED_CONTACT_M = 0.2e-3;
    private static final double GRADED_LONGEST_SHARE = 1.0 / 40.0;
    private static final double GRADED_LEAST_LONGEST_M = 0.5e-3;
    private static final double GRADED_END_SHARE = 1.0 / 12.0;

    private Grid() {}

    /**
     * Returns links of a graded grid for a layer, growing geometrically from its ends.
     *
     * @param thicknessM thickness of the layer, m
     * @param factor 2 halves every link
     * @param start what happens at the outer end
     * @param end what happens at the end towards the room
     */
    static double[] graded(double thicknessM, double factor, End start, End end) {
        double longest = Math.max(GRADED_LONGEST_SHARE * thicknessM, GRADED_LEAST_LONGEST_M) / factor;
        double most = Math.min(longest, GRADED_END_SHARE * thicknessM / factor);
        double first = Math.min(gradedM(start) / factor, most);
        double last = Math.min(gradedM(end) / factor, most);
        return grown(thicknessM, new double[] {first, last}, Math.pow(GRADED_GROWTH, 1.0 / factor), longest);
    }

    private static double gradedM(End end) {
        return switch (end) {
            case FACE -> GRADED_FACE_M;
            case OUTER -> GRADED_CONTACT_M;
            case STILL -> Double.POSITIVE_INFINITY;
        };
    }

    /**
     * Moves inner nodes to asked places, each to the nearest one that is free, by less than half a link.
     *
     * @param links links of a layer, m; changed
     * @param placesM places from its outer end, m
     */
    static void moveNodes(double[] links, List<Double> placesM) {
        double[] nodes = new double[links.length + 1];
        for (int k = 0; k < links.length; k++) {
            nodes[k + 1] = nodes[k] + links[k];
        }
        boolean[] taken = new boolean[nodes.length];
        double[] moved = nodes.clone();
        for (double placeM : placesM) {
            int nearest = nearest(nodes, placeM);
            boolean inner = nearest > 0 && nearest < links.length;
            if (inner && !taken[nearest]) {
                taken[nearest] = true;
                moved[nearest] = placeM;
            }
        }
        for (int k = 0; k < links.length; k++) {
            links[k] = moved[k + 1] - moved[k];
        }
    }

    private static int nearest(double[] nodes, double placeM) {
        int nearest = 0;
        for (int k = 1; k < nodes.length; k++) {
            nearest = Math.abs(nodes[k] - placeM) < Math.abs(nodes[nearest] - placeM) ? k : nearest;
        }
        return nearest;
    }

    /**
     * Returns links for a coat: crowded at both ends by a hyperbolic tangent.
     *
     * @param thicknessM thickness of the coat, m
     * @param factor 2 halves every link
     */
    static double[] coat(double thicknessM, double factor) {
        int links = (int) Math.max(4, Math.round(COAT_LINKS * factor));
        double[] result = new double[links];
        double before = 0.0;
        for (int k = 1; k <= links; k++) {
            double place = k == links
                    ? thicknessM
                    : 0.5
                            * thicknessM
                            * (1.0 + Math.tanh(COAT_CROWDING * (2.0 * k / links - 1.0)) / Math.tanh(COAT_CROWDING));
            result[k - 1] = place - before;
            before = place;
        }
        return result;
    }

    /**
     * Returns links for a layer of a wall, growing geometrically from both ends.
     *
     * @param thicknessM thickness of the layer, m
     * @param factor 2 halves every link
     * @param start what happens at the outer end
     * @param end what happens at the end towards the room
     */
    static double[] layer(double thicknessM, double factor, End start, End end) {
        double growth = Math.pow(GROWTH, 1.0 / factor);
        double longest = Math.max(LONGEST_SHARE * thicknessM, LEAST_LONGEST_M) / factor;
        double first = Math.min(Math.min(start.firstM / factor, longest), thicknessM / 4.0);
        double last = Math.min(Math.min(end.firstM / factor, longest), thicknessM / 4.0);
        return grown(thicknessM, new double[] {first, last}, growth, longest);
    }

    /** Grows links from both ends, the shorter one first, until they meet; then all shrink to fit. */
    private static double[] grown(double thicknessM, double[] ends, double growth, double longest) {
        double first = ends[0];
        double last = ends[1];
        List<Double> fromStart = new ArrayList<>();
        List<Double> fromEnd = new ArrayList<>();
        double reach = 0.0;
        while (reach < thicknessM) {
            boolean atStart = first <= last;
            double link = atStart ? first : last;
            (atStart ? fromStart : fromEnd).add(link);
            reach += link;
            first = atStart ? Math.min(first * growth, longest) : first;
            last = atStart ? last : Math.min(last * growth, longest);
        }
        Collections.reverse(fromEnd);
        fromStart.addAll(fromEnd);
        double shrink = thicknessM / reach;
        return fromStart.stream().mapToDouble(link -> link * shrink).toArray();
    }
}
