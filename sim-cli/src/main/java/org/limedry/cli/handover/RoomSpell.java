package org.limedry.cli.handover;

import java.util.List;
import org.limedry.study.care.CareRecord;

/** A spell past a limit, with its room. */
record RoomSpell(String room, CareRecord.Spell spell) {
    static List<RoomSpell> of(CareRecord care) {
        return care.rooms().stream()
                .flatMap(room -> room.spells().stream().map(spell -> new RoomSpell(room.room(), spell)))
                .toList();
    }
}
