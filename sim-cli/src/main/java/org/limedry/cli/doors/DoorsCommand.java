package org.limedry.cli.doors;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.Question;
import org.limedry.cli.site.Site;
import org.limedry.climate.SensorError;
import org.limedry.study.doors.DoorWay;
import org.limedry.units.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code limedry doors SITE}. */
@Command(
        name = "doors",
        description = "Doors and windows of a room hour by hour: open, shut, no difference, and why.",
        footer = {
            "",
            "With --out DIR writes doors.html (one sheet for the wall of the site hut, A4, lying),",
            "doors.svg, doors.png, doors.csv and doors.json. Rain is not in the weather: look first."
        })
public final class DoorsCommand implements Callable<Integer> {
    @Mixin
    private Question question;

    @Option(names = "--room", paramLabel = "ROOM", description = "The room; ordinarily that whose coat waits longest.")
    private @Nullable String room;

    @Option(
            names = "--from",
            paramLabel = "DATE",
            description = "First day; ordinarily the first of the forecast, or that of the first coat in the room.")
    private @Nullable LocalDate from;

    @Option(names = "--days", paramLabel = "N", description = "Days, 1 to 7; ordinarily 7, or what is left.")
    private @Nullable Integer days;

    @Option(
            names = "--forecast",
            paramLabel = "FILE",
            description = "Hourly forecast for the days, in the form of a weather file; else the weather of the site.")
    private @Nullable Path forecast;

    @Option(
            names = "--temperature-error",
            paramLabel = "K",
            defaultValue = "0.5",
            description = "One-sigma error of a thermometer, 0 to 5 K; ordinarily ${DEFAULT-VALUE}.")
    private double temperatureErrorK;

    @Option(
            names = "--humidity-error",
            paramLabel = "PERCENT",
            defaultValue = "3",
            description = "One-sigma error of a humidity reading, 0 to 20 percent; ordinarily ${DEFAULT-VALUE}.")
    private double humidityErrorPercent;

    @Option(names = "--nights", description = "The doors may stand open at night: judge the nights too.")
    private boolean nights;

    @Override
    public Integer call() throws IOException {
        SensorError errors = errors();
        Site site = question.site();
        DoorsWanted wanted = new DoorsWanted(
                Optional.ofNullable(room), Optional.ofNullable(from), Optional.ofNullable(days), errors, nights);
        DoorsRun run = new DoorsRun(question, site, wanted, DoorsForecast.read(Optional.ofNullable(forecast), site));
        Optional<DoorFindings> found = run.findings();
        if (found.isEmpty()) {
            question.warn("the calculation gave up within the days asked for: nothing was written");
            return ExitCode.UNFINISHED.code();
        }
        DoorFindings findings = found.get();
        question.tell(
                new DoorWords(findings).console(),
                DoorsFiles.of(findings, question.foot(site, run.basis(), List.of())));
        boolean missing = findings.waits().isPresent()
                && findings.of(DoorWay.PLAN).ready().isEmpty();
        if (missing) {
            question.warn(findings.waits().orElseThrow() + ": likely date missing, the run ends first");
        }
        return (missing ? ExitCode.UNFINISHED : ExitCode.DONE).code();
    }

    private SensorError errors() {
        if (!(temperatureErrorK >= 0.0 && temperatureErrorK <= 5.0)) {
            throw question.refused("--temperature-error: must be 0 to 5 K, was " + temperatureErrorK);
        }
        if (!(humidityErrorPercent >= 0.0 && humidityErrorPercent <= 20.0)) {
            throw question.refused("--humidity-error: must be 0 to 20 percent, was " + humidityErrorPercent);
        }
        return new SensorError(temperatureErrorK, Units.fractionFromPercent(humidityErrorPercent));
    }
}
