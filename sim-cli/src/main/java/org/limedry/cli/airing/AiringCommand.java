package org.limedry.cli.airing;

import java.io.IOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.Question;
import org.limedry.cli.page.Page;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code limedry airing SITE}. */
@Command(
        name = "airing",
        description =
                "How much air does a room need: doors shut, open for hours a day, or a fan; cold and gently heated.",
        footer = {
            "",
            "The levels take the place of the room's heaters and fans and of the hours of its doors and windows to outdoors;",
            "its dehumidifiers and people stay, and so do other rooms and doors between rooms. Heat is electric.",
            "With --out DIR writes airing.html, .svg, .png, .csv and .json. A forecast: a hand test overrules it."
        })
public final class AiringCommand implements Callable<Integer> {
    @Mixin
    private Question question;

    @Option(names = "--room", paramLabel = "NAME", description = "The room; if not said, the one that waits longest.")
    private @Nullable String room;

    @Option(
            names = "--by",
            paramLabel = "DATE",
            description = "The day by which every coat of the room is to be ready.")
    private @Nullable String by;

    @Option(
            names = "--levels",
            paramLabel = "LEVEL",
            split = ",",
            description = "Levels to try: door hours a day, or fan and m3/h, as in 0,4,8,fan200. Shut is always tried.")
    private List<String> levels = List.of();

    @Option(
            names = "--heat",
            paramLabel = "KW",
            split = ",",
            description = "Electric heat to try beside the cold room, kW; may be given more than once."
                    + " If not said, 30 W for each m3 of room, 1 to 3 kW.")
    private List<Double> heats = List.of();

    @Option(
            names = "--hold",
            paramLabel = "C",
            description = "What the thermostat holds; if not said, 4 degrees above the mean outdoors, 10 to 20.")
    private @Nullable Double hold;

    @Option(names = "--without-plant", description = "Leave out every heater, fan and dehumidifier of the site.")
    private boolean withoutPlant;

    @Override
    public Integer call() throws IOException {
        AiringAsked asked = new AiringAsked(
                Optional.ofNullable(room), date(), levels, heats, Optional.ofNullable(hold), withoutPlant);
        AiringAnswer answer = AiringRuns.answer(question, asked);
        question.tell(AiringConsole.lines(answer), AiringFiles.of(answer, foot(answer)));
        if (!answer.isDated()) {
            question.warn("No likely date: not ready when the runs end.");
            return ExitCode.UNFINISHED.code();
        }
        return ExitCode.DONE.code();
    }

    private Optional<LocalDate> date() {
        if (by == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(LocalDate.parse(by));
        } catch (DateTimeParseException e) {
            throw question.refused("--by: must be a date like 2026-11-20, was " + by);
        }
    }

    private Page.Foot foot(AiringAnswer answer) {
        return question.foot(
                answer.site(),
                List.of(
                        "Each level was run on its own from the first day, on the same weather ("
                                + answer.site().weatherName()
                                + "), every coat laid when the one under it was ready. Doors"
                                + " and windows to outdoors stand open together, the middle of their hours at 13:00, every"
                                + " day. Fresh air is the mean over the wait.",
                        String.join(" ", AiringConsole.plant(answer))),
                List.of(
                        "flow through doors and cracks is good to a factor of 1.5: low and high are the one-in-five values;",
                        "a dry day is one on which the dew point outside lies below the coldest plastered wall while the"
                                + " doors are open;",
                        "a difference under 2 days, or under a twentieth of the wait, is taken for none;",
                        "air to harden is what keeps the room at 300 ppm of carbon dioxide while the lime takes up what it"
                                + " took (judgement)."));
    }
}
