package org.limedry.cli.programme;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.ask.Question;
import org.limedry.cli.job.Job;
import org.limedry.cli.job.JobBasis;
import org.limedry.cli.page.Days;
import org.limedry.cli.site.Site;
import org.limedry.simulation.Outcome;
import org.limedry.simulation.Scenario;
import org.limedry.simulation.Simulation;
import org.limedry.study.Draw;
import org.limedry.study.Ensemble;
import org.limedry.study.EnsembleResult;
import org.limedry.study.job.NextDoor;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code limedry programme SITE}. */
@Command(
        name = "programme",
        description = "Bars for work and for waiting: which gang lays which coat when, and when all is ready.",
        footer = {
            "",
            "Gangs come from gangs in the site file, else one of two people is taken.",
            "With --out writes programme.html, .svg, .png, .csv and .json."
        })
public final class ProgrammeCommand implements Callable<Integer> {
    @Mixin
    private final Question question = new Question();

    @Override
    public Integer call() throws IOException {
        Site file = question.site();
        Site site = Job.longest(file, 0).orElse(file);
        Ensemble ensemble = question.ensemble(site);
        EnsembleResult result = question.untilReady(ensemble, site::programme);
        Job job = Job.of(site, result);
        ProgrammeAnswer answer = new ProgrammeAnswer(
                job,
                neighbours(job),
                question.foot(site, JobBasis.of(site, ensemble.draws().size()), List.of()));
        question.tell(answer.lines(), answer.files());
        if (!answer.complete()) {
            question.warn("programme: not all coats are ready by " + Days.full(job.lastDay())
                    + ", the end of the run: no date given, not guessed");
        }
        return (answer.complete() ? ExitCode.DONE : ExitCode.UNFINISHED).code();
    }

    /** Runs each plastered room without the plaster of the others, and the whole with the doors between rooms shut. */
    private Neighbours neighbours(Job job) {
        List<String> rooms = List.copyOf(NextDoor.joinedRooms(job.scenario()));
        if (rooms.isEmpty()) {
            return new Neighbours(Map.of(), Optional.empty());
        }
        List<Function<Draw, Scenario>> ways = new ArrayList<>();
        for (String room : rooms) {
            ways.add(draw -> NextDoor.alone(job.scenario(), job.result().likely(), room));
        }
        ways.add(draw -> NextDoor.innerOpeningsShut(job.scenario()));
        List<EnsembleResult> results = question.run(Ensemble.likelyOnly(), ways, Simulation.Until.ALL_READY);
        Map<String, Outcome> alone = new HashMap<>();
        for (int i = 0; i < rooms.size(); i++) {
            alone.put(rooms.get(i), results.get(i).likely());
        }
        return new Neighbours(alone, Optional.of(results.get(rooms.size())));
    }
}
