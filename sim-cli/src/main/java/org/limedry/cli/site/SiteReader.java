package org.limedry.cli.site;

import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.TextFile;
import org.limedry.cli.site.schema.Entry;
import org.limedry.cli.site.schema.Node;
import org.limedry.cli.site.schema.Place;
import org.limedry.cli.site.schema.Problems;
import org.limedry.cli.site.schema.YamlTree;

/** Reads site files: a site that can be run, or everything that is wrong with the file. */
public final class SiteReader {
    private static final long MOST_BYTES = 1_000_000;

    private final Problems problems;
    private final Path folder;
    private final boolean alone;

    private SiteReader(String shown, Path folder, boolean alone) {
        this.problems = new Problems(shown);
        this.folder = folder;
        this.alone = alone;
    }

    /** What became of a file. */
    public sealed interface Result {}

    /** It can be run. */
    public record Good(Site site) implements Result {}

    /** It cannot; at least one problem, in the order of the lines. */
    public record Bad(List<InputProblem> problems) implements Result {
        public Bad {
            problems = List.copyOf(problems);
        }
    }

    /** Reads a file; files that it names are looked for beside it. */
    public static Result read(Path file) {
        return read(file, false);
    }

    /** Reads a file without what was read and learnt on the site, which may be missing or wrong. */
    public static Result readAlone(Path file) {
        return read(file, true);
    }

    private static Result read(Path file, boolean alone) {
        TextFile.Content content = TextFile.read(file, file.toString(), "", MOST_BYTES);
        if (content instanceof TextFile.Unreadable unreadable) {
            return new Bad(List.of(unreadable.problem()));
        }
        Path folder = file.toAbsolutePath().normalize().getParent();
        SiteReader reader = new SiteReader(file.toString(), folder == null ? file : folder, alone);
        return reader.parse(((TextFile.Text) content).text());
    }

    /**
     * Reads the text of a file.
     *
     * @param shown the file as the user named it
     * @param folder where the files that it names are looked for
     */
    static Result parse(String text, String shown, Path folder) {
        return new SiteReader(shown, folder, false).parse(text);
    }

    private Result parse(String text) {
        Optional<Site> site = YamlTree.parse(text, problems).flatMap(this::site);
        return site.isPresent() ? new Good(site.get()) : new Bad(problems.sorted());
    }

    private Optional<Site> site(Node root) {
        Optional<Entry> read = SiteKeys.BLOCK.read(root, problems.root());
        if (read.isEmpty()) {
            return Optional.empty();
        }
        Entry entry = read.get();
        Library library = Library.load();
        Materials materials = new Materials(entry, library);
        Optional<SiteWeather> weather = entry.given(SiteKeys.PLACE).flatMap(place -> SiteWeather.load(place, folder));
        Optional<RunDays> days =
                RunDays.of(entry, weather.map(SiteWeather::zone).orElse(ZoneOffset.UTC));
        WallNames names = WallNames.of(entry);
        new RoomChecks(entry).run();
        MeasureKeys.check(entry);
        Mixes.check(entry, library.mortars());
        materials.check();
        new CoatChecks(entry, names, days).run();
        new PlannedChecks(entry, names).run();
        Optional<SiteWeather> plannedWeather = weather.flatMap(actual -> plannedWeather(entry, actual));
        if (problems.isEmpty() && weather.isPresent() && days.isPresent()) {
            weather.get().checkReach(entry.get(SiteKeys.PLACE), days.get());
        }
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        SiteParts file = new SiteParts(
                entry,
                days.orElseThrow(),
                weather.orElseThrow(),
                names,
                Faces.of(entry, names),
                library,
                Optional.empty(),
                Optional.empty());
        return site(file, materials, plannedWeather.orElse(file.weather()));
    }

    /** Adds what lies beside the file, and what had been agreed. */
    private Optional<Site> site(SiteParts file, Materials materials, SiteWeather plannedWeather) {
        SiteParts parts = alone ? file : file.with(ReadingFiles.load(file, folder), fitted(file, materials));
        if (!problems.isEmpty()) {
            return Optional.empty();
        }
        if (!parts.entry().isGiven(SiteKeys.PLANNED)) {
            return Optional.of(new Site(parts, materials));
        }
        PlannedJob planned = new PlannedJob(parts, materials, plannedWeather);
        planned.check();
        return problems.isEmpty() ? Optional.of(new Site(parts, materials, planned)) : Optional.empty();
    }

    /** Loads the weather on which the plan was made; clock and height are those of the place. */
    private Optional<SiteWeather> plannedWeather(Entry entry, SiteWeather actual) {
        return entry.given(SiteKeys.PLANNED)
                .filter(planned -> planned.given(PlannedKeys.WEATHER).isPresent())
                .flatMap(planned -> actual.other(
                        planned.get(PlannedKeys.WEATHER),
                        entry.get(SiteKeys.PLACE),
                        planned.at(PlannedKeys.WEATHER),
                        folder));
    }

    /** Loads what an earlier fit said, or reports that it cannot be used. */
    private Optional<FittedFile> fitted(SiteParts parts, Materials materials) {
        Place at = parts.entry().at(SiteKeys.FITTED);
        return parts.entry()
                .given(SiteKeys.FITTED)
                .flatMap(name -> NamedFile.in(folder, name, at).flatMap(path -> fittedFile(path, name, at)))
                .map(file -> {
                    file.outdated(new Site(parts, materials))
                            .forEach(reason ->
                                    at.problem(reason, "must go with this file: leave fitted out and run limedry fit"));
                    return file;
                });
    }

    private Optional<FittedFile> fittedFile(Path path, String name, Place at) {
        TextFile.Content content = TextFile.read(path, name, at.path(), MOST_BYTES);
        if (content instanceof TextFile.Unreadable unreadable) {
            problems.add(unreadable.problem());
            return Optional.empty();
        }
        FittedJson.Result result = FittedJson.parse(((TextFile.Text) content).text(), name);
        if (result instanceof FittedJson.Bad bad) {
            problems.add(bad.problem());
            return Optional.empty();
        }
        return Optional.of(((FittedJson.Good) result).file());
    }
}
