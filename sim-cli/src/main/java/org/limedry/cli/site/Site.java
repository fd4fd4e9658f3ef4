package org.limedry.cli.site;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.diary.Diary;
import org.limedry.cli.readings.diary.DiaryPlaces;
import org.limedry.climate.Shelter;
import org.limedry.climate.WeatherQuality;
import org.limedry.climate.WeatherRecord;
import org.limedry.lime.LimeKind;
import org.limedry.simulation.Scenario;
import org.limedry.study.Draw;
import org.limedry.study.Uncertain;
import org.limedry.wall.WallPlan;

/** A site file that can be run: everything it says, everything it takes for granted, and what nobody can know. */
public final class Site {
    /**
     * Key of a draw that asks for weather that might have been, in place of the year shifted: one of the weather's own years
     * where there are three or more, else blocks of days of the same season put together.
     */
    public static final String OTHER_WEATHER = "otherWeather";

    /** Key of the year's weather taken earlier or later. */
    public static final String WEATHER_SHIFT = "weatherShift";

    private final SiteParts parts;
    private final Materials materials;
    private final int movedDays;
    private final Optional<PlannedJob> planned;
    private final Guesses guesses;
    private final ScenarioMaker maker;
    private final List<Uncertain> uncertain;
    private final List<Uncertain> fittable;
    private final List<Assumption> assumptions;

    Site(SiteParts parts, Materials materials) {
        this(parts, materials, 0, Optional.empty());
    }

    Site(SiteParts parts, Materials materials, PlannedJob planned) {
        this(parts, materials, 0, Optional.of(planned));
    }

    private Site(SiteParts parts, Materials materials, int movedDays, Optional<PlannedJob> planned) {
        this.planned = planned;
        this.parts = parts;
        this.materials = materials;
        this.movedDays = movedDays;
        this.guesses = new Guesses(parts, materials);
        this.maker = new ScenarioMaker(parts, materials, guesses, movedDays);
        List<Guess> all = new Unknowns(parts, guesses)
                .all(parts.weather().reachesAround(parts.entry().get(SiteKeys.PLACE), parts.days(), movedDays));
        List<Uncertain> open = Unknowns.open(all).stream().map(Guess::uncertain).toList();
        this.fittable = open.stream()
                .filter(unknown -> !unknown.key().equals(WEATHER_SHIFT))
                .toList();
        this.uncertain =
                uncertain(Unknowns.varied(all).stream().map(Guess::uncertain).toList());
        this.assumptions = new Assumptions(parts, all).list();
    }

    /** Returns the unknowns that move the dates most; those that were fitted, together as one. */
    private List<Uncertain> uncertain(List<Uncertain> varied) {
        Optional<FittedFile> drawn =
                parts.fitted().filter(file -> !file.fitted().points().isEmpty());
        Set<String> learnt = drawn.map(file -> Set.copyOf(file.fitted().keys())).orElse(Set.of());
        return Stream.concat(
                        drawn.map(FittedFile::leftOpen).stream(),
                        varied.stream().filter(unknown -> !learnt.contains(unknown.key())))
                .toList();
    }

    /** Returns what the user calls the job. */
    public String name() {
        return parts.entry().get(SiteKeys.SITE);
    }

    /** Returns the clock by which all times are told. */
    public ZoneId zone() {
        return parts.days().zone();
    }

    /** Returns when work begins on a day: a gang begins, a coat goes on, a bucket is emptied, the hand tries a wall. */
    public Instant workBegins(LocalDate day) {
        return parts.days().workBegins(day);
    }

    /** Returns the start of the run. */
    public Instant from() {
        return parts.days().from();
    }

    /** Returns the end of the run. */
    public Instant until() {
        return parts.days().until();
    }

    /** Returns the bucket in which a report counts water, litres. */
    public double bucketLitres() {
        return parts.entry().get(SiteKeys.BUCKET_LITRES);
    }

    /** Returns how much of the wind reaches the building. */
    public Shelter shelter() {
        return parts.entry().get(SiteKeys.PLACE).get(SiteKeys.SHELTER);
    }

    /** Returns the air temperature below which no coat is laid when ready, C. */
    public double coldLineCelsius() {
        return parts.entry().get(SiteKeys.COLD_LINE);
    }

    /** Returns the name of the rule for when the next coat may go on. */
    public String ruleName() {
        return parts.entry().get(SiteKeys.READY_RULE).named().name();
    }

    /** Tells whether the file says of itself, in the name of the site, that it is invented. */
    public boolean isInvented() {
        return name().toLowerCase(Locale.ROOT).contains("(invented)");
    }

    /** Tells whether any mix is gauged with quicklime. */
    public boolean hasQuicklime() {
        return parts.coats().stream().anyMatch(coat -> parts.mixOf(coat).get(MixKeys.LIME) == LimeKind.QUICKLIME);
    }

    /** Tells whether a wall that is plastered has old paint on it. */
    public boolean plastersOldPaint() {
        return parts.coats().stream()
                .anyMatch(coat -> parts.wallOf(coat)
                        .entry()
                        .given(WallKeys.FINISH)
                        .filter(WallKeys.Finish.OLD_PAINT::equals)
                        .isPresent());
    }

    /** Returns what the listed walls are made of and how wet they begin, by their name in a scenario: "damp old brick". */
    public Map<String, String> backgroundWords() {
        Map<String, String> words = new TreeMap<>();
        for (WallSpec spec : parts.faces().specs()) {
            if (spec.kind() == WallPlan.Kind.LISTED && spec.build() instanceof WallSpec.Wall wall) {
                String wetness =
                        wall.wetness().isMeasured() ? "" : wall.wetness().words() + " ";
                words.put(spec.name(), wetness + wall.background().words());
            }
        }
        return words;
    }

    /** Returns the first day on which a coat is laid. */
    public LocalDate firstLaid() {
        return parts.coats().stream()
                .flatMap(coat -> coat.get(CoatKeys.LAID).stream())
                .min(LocalDate::compareTo)
                .orElse(parts.days().first());
    }

    /** Returns the gangs that lay the coats in a programme: those of the file, or a usual one. */
    public List<GangPlan> gangs() {
        return parts.entry()
                .given(SiteKeys.GANGS)
                .map(gangs -> gangs.stream().map(GangKeys::plan).toList())
                .orElseGet(() -> List.of(GangKeys.usual()));
    }

    /**
     * Returns how wet a listed wall is as the run begins: "damp", "as measured".
     *
     * @param planName name of a wall in a scenario
     */
    public String wetnessOf(String planName) {
        return parts.faces().named(planName).build() instanceof WallSpec.Wall wall
                ? wall.wetness().words()
                : "not known";
    }

    /** Returns the names of the rooms in the order of the file. */
    public List<String> rooms() {
        return List.copyOf(parts.rooms().keySet());
    }

    /**
     * Returns a wall in the words of a report: without its room where there is only one.
     *
     * @param planName name of a wall in a scenario
     */
    public String wallWords(String planName) {
        String prefix = rooms().get(0) + " ";
        return rooms().size() == 1 && planName.startsWith(prefix) ? planName.substring(prefix.length()) : planName;
    }

    /** Returns the name of the weather: a shipped year or a file. */
    public String weatherName() {
        return parts.weather().name();
    }

    /** Returns what was found in the weather and what was done about it. */
    public WeatherQuality weatherQuality() {
        return parts.weather().quality();
    }

    /** Returns the statements that must stand wherever results drawn from the weather are shown; none for an own file. */
    public List<String> attribution() {
        return parts.weather().attribution();
    }

    /** Returns the faces that the file does not list and that were made up, each in a sentence. */
    public List<String> madeUpFaces() {
        return parts.faces().madeUp();
    }

    /**
     * Returns the same job with another length of run, if the weather reaches.
     *
     * @param days days from the first day on; above 0
     */
    public Optional<Site> lasting(int days) {
        return covered(new Site(parts.with(parts.days().lasting(days)), materials, movedDays, planned));
    }

    /**
     * Returns the same job in another season, if the weather reaches: it keeps its dates and weekdays, the weather is that
     * of as many days later. Hand tests, which belong to their days, are left out.
     *
     * @param days days by which the job is moved, negative for earlier; a year at most
     */
    public Optional<Site> moved(int days) {
        return covered(new Site(parts, materials, days, planned));
    }

    private static Optional<Site> covered(Site site) {
        return site.maker.weather(0) instanceof WeatherRecord.Covered ? Optional.of(site) : Optional.empty();
    }

    /** Returns the days by which the job was moved: a date of its runs stands for one that is as many days later. */
    public int movedDays() {
        return movedDays;
    }

    /** Returns both sides of the job, if the file says what had been agreed. */
    public Optional<PlannedJob> planned() {
        return planned;
    }

    /**
     * Returns what nobody can know, at most twelve, those that move the dates most first; after a fit what it left open, together
     * as one, and those that were not fitted.
     */
    public List<Uncertain> uncertain() {
        return uncertain;
    }

    /**
     * Returns how many members to make where so many are asked for: after a fit at least one for each way that it left open, or
     * some of these would have no say.
     */
    public int members(int asked) {
        return fitted().map(file -> Math.max(asked, file.fitted().points().size()))
                .orElse(asked);
    }

    /** Returns where the unknowns of a draw lie, one by one, those too that a fit has tied together. */
    public Draw oneByOne(Draw draw) {
        return fitted().map(file -> file.fitted().apply(draw)).orElse(draw);
    }

    /** Returns rooms and walls with their sizes, a line each: what a fit was made with. */
    public List<String> building() {
        return BuildingWords.of(scenario(Draw.likely()));
    }

    /** Returns everything of the building that nobody can know and that readings may tell of; weather is read, not fitted. */
    public List<Uncertain> fittable() {
        return fittable;
    }

    /** Returns what was read on the site, if the file names any readings. */
    public Optional<SiteReadings> readings() {
        return parts.readings();
    }

    /** Returns what a fit said of it, if the file names one. */
    public Optional<FittedFile> fitted() {
        return parts.fitted();
    }

    /**
     * Returns the same job with other knowledge.
     *
     * @param known up to when what happened is known; without it nothing is
     * @param learnt what is made of it
     */
    public Site knowing(Optional<SiteReadings.Known> known, Optional<FittedFile> learnt) {
        Optional<SiteReadings> readings = known.flatMap(at -> parts.readings().map(all -> all.with(at)));
        return new Site(parts.with(readings, learnt), materials, movedDays, planned);
    }

    /** Returns the names that the diary of this site uses. */
    public DiaryPlaces diaryPlaces() {
        return SitePlaces.of(parts);
    }

    /**
     * Returns what in a diary cannot be on this site.
     *
     * @param shown the file of the diary as the user named it
     */
    public List<InputProblem> doubts(Diary diary, String shown) {
        return DiaryChecks.of(parts, diary, shown);
    }

    /** Returns what keeps the weather up to an instant from being that of these days; empty if it is. */
    public Optional<String> weatherDoubt(Instant until) {
        return new OutdoorDoubts(parts).doubt(until);
    }

    /** Returns where other weather stands in for what was not read outdoors, each in a sentence. */
    public List<String> outdoorRemarks() {
        return new OutdoorDoubts(parts).remarks();
    }

    /** Returns weather that might have been as an unknown, if the weather reaches far enough to make it from. */
    public Optional<Uncertain> otherWeather() {
        int years = parts.weather().yearShiftsDays(parts.days(), movedDays).size();
        boolean ownYears = years >= SiteWeather.LEAST_OWN_YEARS;
        if (!ownYears && !parts.weather().reachesAround(parts.entry().get(SiteKeys.PLACE), parts.days(), movedDays)) {
            return Optional.empty();
        }
        String basis = ownYears
                ? "one of the " + years + " years of " + weatherName()
                : "blocks of 5 days of " + weatherName() + " from within 21 days of the same date";
        return Optional.of(Uncertain.byPlace(OTHER_WEATHER, "weather that might have been", "resampled", basis));
    }

    /** Returns the measures of the file, in its order; empty if it has none. */
    public List<SiteMeasure> measures() {
        RoomPlans plans = new RoomPlans(parts, guesses, Draw.likely());
        return parts.entry().given(SiteKeys.MEASURES).orElse(List.of()).stream()
                .map(entry -> SiteMeasure.of(entry, plans))
                .toList();
    }

    /** Returns the firm's own rates, if the file has any. */
    public Optional<Rates> rates() {
        return parts.entry()
                .given(SiteKeys.RATES)
                .map(rates -> new Rates(
                        rates.get(MeasureKeys.CURRENCY),
                        rates.given(MeasureKeys.ELECTRICITY),
                        rates.given(MeasureKeys.FUEL),
                        rates.get(MeasureKeys.LABOUR),
                        rates.get(MeasureKeys.WAITING)));
    }

    /** Returns everything that was taken since the file does not say it, the unknowns first. */
    public List<Assumption> assumptions() {
        return assumptions;
    }

    /**
     * Returns the run for one way in which the unknowns may lie; the same draw gives the same run.
     *
     * @param draw quantiles by the keys of {@link #uncertain()}
     */
    public Scenario scenario(Draw draw) {
        return maker.scenario(draw);
    }

    /**
     * Returns the run in which gangs lay the coats, each when it is ready and a gang is free.
     *
     * @param draw quantiles by the keys of {@link #uncertain()}; others do nothing
     */
    public Scenario programme(Draw draw) {
        return scenario(draw).withCoats(new CoatPlans(parts, guesses, draw).coatsByGang(gangs()));
    }
}
