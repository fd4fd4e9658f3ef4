package org.limedry.cli.air;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import org.limedry.air.Enhancement;
import org.limedry.air.MoistAir;
import org.limedry.air.Phase;
import org.limedry.air.Saturation;
import org.limedry.air.SaturationFormula;
import org.limedry.cli.ask.ExitCode;
import org.limedry.cli.page.WholeFile;
import org.limedry.cli.problem.BadInputException;
import org.limedry.cli.problem.InputProblem;
import org.limedry.cli.readings.AirRules;
import org.limedry.cli.readings.AirTable;
import org.limedry.cli.safety.Situation;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** {@code limedry air}: what moist air holds, for one state or for a table of states. */
@Command(
        name = "air",
        description = "Says what moist air holds: one state, or a table of them.",
        footer = {
            "",
            "A table has the columns celsius,rhPercent,pressurePa and, if wanted,",
            "wallCelsius; any others are kept. Lines above the heading that begin with #",
            "are passed over. These columns are added:",
            "  saturationPressurePa, vapourPressurePa, dewPointCelsius, frostPointCelsius,",
            "  wetBulbCelsius, humidityRatioKgPerKg, absoluteHumidityGPerM3,",
            "  enthalpyKJPerKg, specificVolumeM3PerKg",
            "and, with wallCelsius, surfaceRhPercent and condenses (true or false).",
            "A cell is blank where there is no value.",
            "",
            "Below 0 C relative humidity is over water, as weather services report it,",
            "unless --below-zero ice. The wet bulb is the thermodynamic one: a wet wick",
            "from 0 C up; below 0 C supercooled water or, with --below-zero ice, a frozen",
            "wick. Where both are possible near 0 C, the wet one is taken."
        })
public final class AirCommand implements Callable<Integer> {
    private static final String STANDARD_PRESSURE_PA = "101325";

    @Spec
    @SuppressWarnings("NullAway.Init") // picocli sets it before call()
    private CommandSpec spec;

    @ArgGroup(multiplicity = "1")
    @SuppressWarnings("NullAway.Init") // picocli sets it before call(): one of the two is required
    private Question question;

    @Option(
            names = "--formula",
            paramLabel = "NAME",
            defaultValue = "WMO8_MAGNUS",
            description = "Saturation formula: ${COMPLETION-CANDIDATES}. Default ${DEFAULT-VALUE}.")
    private SaturationFormula formula = SaturationFormula.WMO8_MAGNUS;

    @Option(
            names = "--below-zero",
            paramLabel = "PHASE",
            defaultValue = "water",
            converter = PhaseWord.class,
            description = "Over what humidity is counted below 0 C: water or ice. Default ${DEFAULT-VALUE}.")
    private Phase belowZero = Phase.WATER;

    /** Either one state or a table. */
    private static final class Question {
        @ArgGroup(exclusive = false)
        private @Nullable State state;

        @ArgGroup(exclusive = false)
        private @Nullable Table table;
    }

    /** One state of air. */
    private static final class State {
        @Option(names = "--celsius", required = true, paramLabel = "C", description = "Air temperature, C.")
        private double celsius;

        @Option(names = "--rh", required = true, paramLabel = "PERCENT", description = "Relative humidity, percent.")
        private double rhPercent;

        @Option(
                names = "--pressure",
                paramLabel = "PA",
                defaultValue = STANDARD_PRESSURE_PA,
                description = "Barometric pressure, Pa. Default ${DEFAULT-VALUE}, the standard at sea level.")
        private double pressurePa;

        @Option(names = "--wall", paramLabel = "C", description = "Temperature of a wall in this air, C.")
        private @Nullable Double wallCelsius;
    }

    /** A table of states. */
    private static final class Table {
        @Option(names = "--table", required = true, paramLabel = "FILE.csv", description = "Table of states.")
        @SuppressWarnings("NullAway.Init") // required by picocli
        private Path file;

        @Option(
                names = "--out",
                paramLabel = "FILE",
                description = "Where the table goes with its results. Default: printed.")
        private @Nullable Path out;
    }

    /** {@code water} or {@code ice}. */
    static final class PhaseWord implements ITypeConverter<Phase> {
        @Override
        public Phase convert(String word) {
            return switch (word.toLowerCase(Locale.ROOT)) {
                case "water" -> Phase.WATER;
                case "ice" -> Phase.ICE;
                default -> throw new TypeConversionException("must be water or ice, was '" + word + "'");
            };
        }
    }

    @Override
    public Integer call() throws IOException {
        Saturation saturation = new Saturation(formula, belowZero, Enhancement.NONE);
        if (question.state != null) {
            tell(question.state, new AirRules(saturation));
        } else if (question.table != null) {
            convert(question.table, saturation);
        }
        return ExitCode.DONE.code();
    }

    private void tell(State state, AirRules rules) {
        List<InputProblem> problems = new ArrayList<>();
        check(problems, "--celsius", state.celsius, rules.brokenByCelsius(state.celsius));
        check(problems, "--rh", state.rhPercent, rules.brokenByRhPercent(state.rhPercent));
        check(problems, "--pressure", state.pressurePa, rules.brokenByPressurePa(state.pressurePa));
        if (state.wallCelsius != null) {
            check(problems, "--wall", state.wallCelsius, rules.brokenByCelsius(state.wallCelsius));
        }
        if (problems.isEmpty()) {
            check(problems, "--pressure", state.pressurePa, rules.brokenByBoth(state.celsius, state.pressurePa));
        }
        if (!problems.isEmpty()) {
            throw new BadInputException(problems);
        }
        MoistAir air = rules.air(state.celsius, state.rhPercent, state.pressurePa);
        OptionalDouble wall = state.wallCelsius == null ? OptionalDouble.empty() : OptionalDouble.of(state.wallCelsius);
        AirWords.of(air, wall).forEach(spec.commandLine().getOut()::println);
        spec.commandLine().getOut().println(Situation.withoutSite().line());
    }

    private static void check(List<InputProblem> problems, String option, double value, Optional<String> broken) {
        broken.ifPresent(
                rule -> problems.add(new InputProblem("command line", 0, option, rule, Double.toString(value))));
    }

    private void convert(Table asked, Saturation saturation) throws IOException {
        AirTable table = AirTable.read(asked.file, saturation, AirColumns.names());
        if (asked.out == null) {
            PrintWriter out = spec.commandLine().getOut();
            AirColumns.write(table, out);
            out.flush();
        } else {
            WholeFile.write(asked.out, "--out", file -> AirColumns.write(table, file));
        }
    }
}
