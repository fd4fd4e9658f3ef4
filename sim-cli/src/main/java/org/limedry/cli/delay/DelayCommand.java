package org.limedry.cli.delay;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.Question;
import org.limedry.cli.page.Bundle;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.site.PlannedJob;
import org.limedry.cli.site.Site;
import org.limedry.simulation.Simulation;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code limedry delay SITE}. */
@Command(
        name = "delay",
        description = "Planned against actual: the days lost by cause, on one A4 page for the client.",
        footer = {
            "",
            "The site file tells the job as it happened, its block 'planned' what had been agreed.",
            "Each cause carries a range from 8 members; with --ranges, from as many as --members says.",
            "Writes delay.pdf, delay.html, delay.svg, delay.png, delay.csv and delay.json into DIR."
        })
public final class DelayCommand implements Callable<Integer> {
    @Mixin
    private Question question;

    @Option(
            names = "--wall",
            paramLabel = "WALL",
            description = "Wall to tell of, \"north\" or \"store north\"; ordinarily the one ready last.")
    private @Nullable String wall;

    @Override
    public Integer call() throws IOException {
        Site site = question.site();
        PlannedJob job = site.planned().orElseThrow(this::nothingPlanned);
        Optional<String> named = named(job);
        DelayRuns runs = DelayRuns.of(site, job);
        if (runs.causes().isEmpty()) {
            question.tell(
                    List.of("No delay to tell: in the file what had been agreed is what happened."), new Bundle());
            return ExitCode.DONE.code();
        }
        List<EnsembleResult> results = question.run(members(site), runs.ways(), Simulation.Until.ALL_READY);
        DelayStory story = DelayStory.of(runs, results, named.orElseGet(() -> runs.lastWall(results)));
        question.tell(DelayAnswer.lines(story), DelayFiles.of(story, question::warn));
        if (story.delay().isOpen()) {
            question.warn("The run ends on " + site.until() + " before the plaster is ready in every run: the days are"
                    + " counted to that day. Set until later.");
        }
        return (story.isComplete() ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }

    private Ensemble members(Site site) {
        return DelayMembers.of(site, question.wantsRanges() ? site.members(question.members()) : DelayMembers.ORDINARY);
    }

    private BadInputException nothingPlanned() {
        return new BadInputException(List.of(new InputProblem(
                question.file().toString(), 0, "planned", "needed for a delay: what had been agreed", "missing")));
    }

    private Optional<String> named(PlannedJob job) {
        if (wall == null) {
            return Optional.empty();
        }
        List<String> found = job.plasteredWalls().stream()
                .filter(name -> name.equals(wall) || name.equals(job.roomOf(name) + " " + wall))
                .toList();
        if (found.size() != 1) {
            String many = found.isEmpty() ? "no plastered wall" : "more than one wall";
            throw question.refused(
                    "--wall: " + many + " \"" + wall + "\"; there are: " + String.join(", ", job.plasteredWalls()));
        }
        return Optional.of(found.get(0));
    }
}
