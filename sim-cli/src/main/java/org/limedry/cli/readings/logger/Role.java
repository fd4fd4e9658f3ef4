package org.limedry.cli.readings.logger;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/** What a column is. */
public enum Role {
    DATE(PlanKey.DATE, "date", "", "utc"),
    TIME(PlanKey.TIME, "time", "", ""),
    TEMPERATURE(
            PlanKey.TEMPERATURE,
            "temperature",
            "temp|celsius|fahrenheit|\u00b0 ?[cf]\\b|\\(.?[cf]\\)|^t$|deg",
            "dew|surface|wall|probe|wet.?bulb|min|max|alarm|limit|high|low|frost|batt"),
    HUMIDITY(
            PlanKey.HUMIDITY,
            "humidity",
            "humid|\\brh|rh\\b|r\\.h|%|^h$",
            "dew|abs|min|max|alarm|limit|high|low|batt|moisture"),
    SURFACE(PlanKey.SURFACE, "wall surface", "surface|\\bwall|probe", "dew|min|max|alarm|limit|humid|rh\\b"),
    WIND(PlanKey.WIND, "wind", "wind.*(m/s|mpers)", "dir|gust|max");

    static final List<Role> MEASURED = List.of(TEMPERATURE, HUMIDITY, SURFACE, WIND);

    private final PlanKey key;
    private final String words;
    private final Pattern has;
    private final Pattern lacks;

    Role(PlanKey key, String words, String has, String lacks) {
        this.key = key;
        this.words = words;
        this.has = Pattern.compile(has.isEmpty() ? "(?!)" : has);
        this.lacks = Pattern.compile(lacks.isEmpty() ? "(?!)" : lacks);
    }

    PlanKey key() {
        return key;
    }

    String words() {
        return words;
    }

    /** Returns whether it may stand in several columns: date parts, or a time with its AM or its clock beside it. */
    boolean mayTakeSeveral() {
        return this == DATE || this == TIME;
    }

    /** Returns whether a column of one can be headed as a column of the other: both are temperatures. */
    boolean isLike(Role other) {
        return this == other || (this == TEMPERATURE && other == SURFACE) || (this == SURFACE && other == TEMPERATURE);
    }

    /** Returns whether a heading may stand over such a column. */
    boolean isNamedBy(String heading) {
        String small = heading.toLowerCase(Locale.ROOT);
        return has.matcher(small).find() && !lacks.matcher(small).find();
    }
}
