package org.limedry.cli.site;

/** A site file that uses every key but those that exclude each other. */
final class FullFile {
    static final String TEXT = """
            site: Everything
            place: {weather: jfk-2013, timeZone: America/New_York, altitudeM: 120, shelter: exposed}
            from: 2026-11-02
            until: 2026-12-29
            bucketLitres: 12
            workingDays: Mon-Sat
            coldLineCelsius: 8
            gangs: [{name: base gang, people: 3, m2PerDay: 15}, {name: finishers}]
            rooms:
              store:
                released: 2026-11-06
                size: {lengthM: 5.2, widthM: 4.1, heightM: 2.4}
                leakagePerHour: 0.8
                floor: screed
                ceiling: masonry
                startCelsius: 9
                startRhPercent: 80
                openings:
                  - {name: yard door, widthM: 0.95, heightM: 2.0, sillM: 0.1, facing: N, open: ["Mon-Fri 09:00-15:30", "2026-11-14 10:00-12:00"]}
                  - {name: window, widthM: 0.8, heightM: 1.1, facing: S, glass: double, open: never}
                  - {name: inner door, to: loft, widthM: 0.9, heightM: 1.9, open: "2026-11-20 to 2026-11-22"}
                walls:
                  north: {lengthM: 4.6, heightM: 2.4, background: old brick, thicknessMm: 340, wetness: {saturationPercent: {low: 20, likely: 30, high: 40}}, otherSide: outdoors, finish: limewash, risingDampLitresPerDayPerM: 1.1}
                  spine: {areaM2: 9.0, background: soft limestone, thicknessMm: 400, wetness: wet, otherSide: {room: loft}}
                  lath: {areaM2: 6.0, background: timber lath, otherSide: {celsius: 12, rhPercent: 75}}
                  paint: {areaM2: 3.0, background: old plaster, finish: old paint, otherSide: closed cavity, wetness: {rhPercent: 80}}
                plant:
                  - {kind: electric heater, name: big fan heater, kW: 2, thermostatCelsius: 14, radiantPercent: 20, aimedAtWall: true, on: "daily 07:00-19:00", from: 2026-11-20}
                  - {kind: unflued LPG heater, kW: 4, on: "Sat 08:00-12:00"}
                  - {kind: flued heater, kW: 5, on: never}
                  - {kind: unflued paraffin heater, kW: 3, on: never}
                  - {kind: dehumidifier, type: desiccant, litresPerDayRated: 14, ratedAt: 20C60, watts: 1200, humidistatPercent: 60, on: always, until: 2026-12-10}
                  - {kind: dehumidifier, type: refrigerant, litresPerDayRated: 30, on: always}
                  - {kind: fan, m3PerHour: 180, on: always}
                  - {kind: people, count: 2, on: "Mon-Fri 08:00-16:30"}
                  - {kind: misting, wall: north, litresPerM2: 0.3, at: ["08:00", "16:00"], from: 2026-11-10, until: 2026-11-12}
              loft:
                volumeM3: 40
                floorAreaM2: 16
                floor: boards
                walls:
                  ceiling: {areaM2: 16, background: timber lath}
                  gable: {areaM2: 10, background: granite, face: wall}
            mixes:
              base: {lime: quicklime, limeParts: 1, sandParts: 3, sand: dry, hair: true, slagPercentOfMix: 5, entrySuctionKPa: 40}
              measured: {lime: NHL 3.5, sandParts: 2.5, waterLitresPerBatch: 12, limeLitresPerBatch: 10, pozzolanPercentOfMix: 0}
              finish: {lime: putty, sandParts: 1, freeWaterLitresPerM3: {low: 400, likely: 450, high: 500}}
            coats:
              - {wall: north, room: store, mix: base, thicknessMm: 11, dubbingOutMm: 6, laid: 2026-11-09, mortarCelsius: 12, prewettingLitresPerM2: 0.5}
              - {wall: north, mix: measured, thicknessMm: 10, laid: when ready}
              - {wall: ceiling, mix: finish, thicknessMm: 3, laid: 2026-11-11, m2PerDay: 8}
            readyRule: {name: our rule, suctionKPa: 250, ageDays: 2.5, faceRhPercent: 97, days: 4}
            handTests: [{wall: north, room: store, coat: 1, date: 2026-11-21, result: nail not knuckle}]
            own:
              old brick: {dryDensityKgPerM3: 1700, heatCapacityJPerKgK: 840, conductivityWPerMK: 0.7, waterAt80KgPerM3: 7, freeSaturationKgPerM3: 290, absorptionKgPerM2RootS: 0.2, entrySuctionKPa: {low: 30, likely: 60, high: 120}, vapourResistance: 14}
            assume:
              openingFlowFactor: 1
              stillAirWPerM2K: {low: 2, likely: 3, high: 4}
              readySuctionKPa: 300
              readyAgeDays: 2
              weatherShiftDays: 0
              coatThicknessFactor: 1
            planned:
              weather: jfk-2013
              rooms:
                store:
                  released: 2026-11-03
                  openings: [{name: yard door, open: "Mon-Fri 08:00-16:00"}]
                  plant: [{kind: electric heater, kW: 2, on: always, from: 2026-11-04}]
                  walls: {north: {wetness: damp}}
              coats: [{wall: north, room: store, coat: 1, thicknessMm: 12}]
            steps: [{date: 2026-11-12, words: asked for the yard door to be left open}]
            records: [site diary, door log]
            normals:
              source: invented
              months: [{month: 11, celsius: 9.1, rhPercent: 70, frostDays: 3, rainDays: 11, rainDaysRecorded: 12}]
            """;

    private FullFile() {}
}
