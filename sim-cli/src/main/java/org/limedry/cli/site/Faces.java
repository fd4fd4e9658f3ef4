package org.limedry.cli.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.limedry.cli.site.schema.Entry;
import org.limedry.units.Units;
import org.limedry.wall.Background;
import org.limedry.wall.WallPlan;

/**
 * All faces of all rooms: those that are listed, and those that the file leaves out: floor, ceiling, panes and the rest of
 * the walls, the last like the largest listed wall of the room.
 */
final class Faces {
    /** A face smaller than that is not made up. */
    private static final double LEAST_AREA_M2 = 0.5;

    private static final String REST = "rest of the walls";
    private static final String MADE_CEILING = "ceiling (not listed)";
    private static final String MADE_FLOOR = "floor (not listed)";
    private static final String PANE = " pane";

    private final Map<String, Entry> rooms;
    private final WallNames names;
    private final List<WallSpec> specs = new ArrayList<>();
    private final List<String> madeUp = new ArrayList<>();

    private Faces(Entry site, WallNames names) {
        this.rooms = site.get(SiteKeys.ROOMS);
        this.names = names;
    }

    /** Tells whether a wall may not be called so, since faces that are made up are. */
    static boolean isReserved(String name) {
        return name.equals(REST) || name.equals(MADE_CEILING) || name.equals(MADE_FLOOR) || name.endsWith(PANE);
    }

    /**
     * The faces of a site.
     *
     * @param specs all of them, room by room
     * @param madeUp those not listed, each in a sentence
     */
    record All(List<WallSpec> specs, List<String> madeUp) {
        All {
            specs = List.copyOf(specs);
            madeUp = List.copyOf(madeUp);
        }

        /** Returns a face by its name. */
        WallSpec named(String name) {
            return specs.stream()
                    .filter(spec -> spec.name().equals(name))
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no face " + name));
        }
    }

    /** Returns the faces of a site without problems. */
    static All of(Entry site, WallNames names) {
        Faces faces = new Faces(site, names);
        faces.rooms.forEach(faces::addRoom);
        return new All(faces.specs, faces.madeUp);
    }

    private void addRoom(String room, Entry entry) {
        names.walls().stream().filter(wall -> wall.room().equals(room)).forEach(wall -> specs.add(listed(wall)));
        RoomSize size = RoomSize.of(entry);
        addRest(room, size);
        double ceilingM2 = size.floorAreaM2() - listedM2(room, WallKeys.Face.CEILING);
        RoomKeys.Ceiling ceiling = entry.get(RoomKeys.CEILING);
        String ceilingName = WallNames.Listed.planName(room, MADE_CEILING);
        if (ceiling == RoomKeys.Ceiling.MASONRY) {
            madeUp(
                    like(principal(room), ceilingName, room, WallPlan.Kind.CEILING, ceilingM2),
                    "a vault like the walls");
        } else {
            madeUp(
                    new WallSpec(
                            ceilingName,
                            room,
                            WallPlan.Kind.CEILING,
                            ceilingM2,
                            new WallSpec.Overhead(ceiling),
                            new WallKeys.Beyond.Closed(),
                            0.0),
                    Words.ofConstant(ceiling) + " under a closed void");
        }
        RoomKeys.Floor floor = entry.get(RoomKeys.FLOOR);
        madeUp(
                new WallSpec(
                        WallNames.Listed.planName(room, MADE_FLOOR),
                        room,
                        WallPlan.Kind.FLOOR,
                        size.floorAreaM2() - listedM2(room, WallKeys.Face.FLOOR),
                        new WallSpec.Ground(floor),
                        new WallKeys.Beyond.Closed(),
                        0.0),
                Words.ofConstant(floor) + " on 1 m of soil");
        entry.get(RoomKeys.OPENINGS).forEach(opening -> addPane(room, opening));
    }

    private WallSpec listed(WallNames.Listed wall) {
        Entry entry = wall.entry();
        WallPlan.Kind kind = switch (wall.face()) {
            case WALL -> WallPlan.Kind.LISTED;
            case CEILING -> WallPlan.Kind.CEILING;
            case FLOOR -> WallPlan.Kind.FLOOR;
        };
        Background background = entry.get(WallKeys.BACKGROUND);
        double thicknessMm = entry.given(WallKeys.THICKNESS_MM).orElse(WallKeys.usualThicknessMm(background));
        WallSpec.Wall build = new WallSpec.Wall(
                background, Units.metresFromMm(thicknessMm), entry.get(WallKeys.WETNESS), entry.get(WallKeys.FINISH));
        double dampLitresPerDay =
                entry.get(WallKeys.RISING_DAMP) * entry.given(WallKeys.LENGTH_M).orElse(0.0);
        return new WallSpec(
                wall.planName(),
                wall.room(),
                kind,
                areaM2(wall),
                build,
                entry.given(WallKeys.OTHER_SIDE)
                        .orElse(
                                background.isOnCavity()
                                        ? new WallKeys.Beyond.Closed()
                                        : new WallKeys.Beyond.Outdoors()),
                dampLitresPerDay / Units.SECONDS_PER_DAY);
    }

    private static double areaM2(WallNames.Listed wall) {
        return WallKeys.areaM2(wall.entry()).orElseThrow();
    }

    /** Returns the area listed for one side of a room, walls that it shares with its neighbours included. */
    private double listedM2(String room, WallKeys.Face face) {
        return names.walls().stream()
                .filter(wall -> (wall.room().equals(room) && wall.face() == face)
                        || (face == WallKeys.Face.WALL && isBehind(wall, room)))
                .mapToDouble(Faces::areaM2)
                .sum();
    }

    private static boolean isBehind(WallNames.Listed wall, String room) {
        return wall.face() == WallKeys.Face.WALL
                && wall.entry()
                        .given(WallKeys.OTHER_SIDE)
                        .filter(beyond -> beyond instanceof WallKeys.Beyond.Room other
                                && other.name().equals(room))
                        .isPresent();
    }

    private double openingsM2(String room) {
        return rooms.entrySet().stream()
                .flatMap(entry -> entry.getValue().get(RoomKeys.OPENINGS).stream()
                        .filter(opening -> entry.getKey().equals(room)
                                || opening.given(OpeningKeys.TO)
                                        .filter(room::equals)
                                        .isPresent()))
                .mapToDouble(opening -> opening.get(OpeningKeys.WIDTH) * opening.get(OpeningKeys.HEIGHT))
                .sum();
    }

    private void addRest(String room, RoomSize size) {
        double restM2 = size.wallAreaM2() - openingsM2(room) - listedM2(room, WallKeys.Face.WALL);
        WallNames.Listed principal = principal(room);
        WallSpec rest = like(principal, WallNames.Listed.planName(room, REST), room, WallPlan.Kind.REST, restM2);
        madeUp(rest, "like the wall " + principal.name());
    }

    /** Returns the largest listed wall of a room, a solid one before lath, or of the site if the room has none. */
    private WallNames.Listed principal(String room) {
        Comparator<WallNames.Listed> byArea =
                Comparator.comparing(Faces::isSolid).thenComparing(Faces::areaM2);
        Optional<WallNames.Listed> own = names.walls().stream()
                .filter(wall -> wall.face() == WallKeys.Face.WALL)
                .filter(wall -> wall.room().equals(room) || isBehind(wall, room))
                .max(byArea);
        return own.or(() -> names.walls().stream().max(byArea)).orElseThrow();
    }

    private static boolean isSolid(WallNames.Listed wall) {
        return !wall.entry().get(WallKeys.BACKGROUND).isOnCavity();
    }

    private WallSpec like(WallNames.Listed model, String name, String room, WallPlan.Kind kind, double areaM2) {
        WallSpec spec = listed(model);
        WallKeys.Beyond beyond =
                spec.beyond() instanceof WallKeys.Beyond.Room ? new WallKeys.Beyond.Outdoors() : spec.beyond();
        return new WallSpec(
                name,
                room,
                kind,
                areaM2,
                spec.build(),
                kind == WallPlan.Kind.CEILING ? new WallKeys.Beyond.Closed() : beyond,
                0.0);
    }

    private void madeUp(WallSpec spec, String words) {
        if (spec.areaM2() >= LEAST_AREA_M2) {
            specs.add(spec);
            madeUp.add(String.format(Locale.ROOT, "%s: %.1f m2, %s", spec.name(), spec.areaM2(), words));
        }
    }

    private void addPane(String room, Entry opening) {
        opening.given(OpeningKeys.GLASS).ifPresent(glass -> {
            String name = WallNames.Listed.planName(room, opening.get(OpeningKeys.NAME) + PANE);
            WallKeys.Beyond beyond = opening.given(OpeningKeys.TO)
                    .<WallKeys.Beyond>map(to -> new WallKeys.Beyond.Room(to, opening.at(OpeningKeys.TO)))
                    .orElse(new WallKeys.Beyond.Outdoors());
            specs.add(new WallSpec(
                    name,
                    room,
                    WallPlan.Kind.PANE,
                    opening.get(OpeningKeys.WIDTH) * opening.get(OpeningKeys.HEIGHT),
                    new WallSpec.Pane(glass.transmittanceWPerM2K()),
                    beyond,
                    0.0));
        });
    }
}
