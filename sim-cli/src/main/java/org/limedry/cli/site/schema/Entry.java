package org.limedry.cli.site.schema;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A group of the file after its keys were read: a value for each key that was given and could be read. */
public final class Entry {
    private final Place place;
    private final List<Key<?>> keys;
    private final Map<Key<?>, Object> values = new HashMap<>();
    private final Map<Key<?>, Place> places = new HashMap<>();

    Entry(Place place, List<Key<?>> keys) {
        this.place = place;
        this.keys = keys;
    }

    /** A default that was taken, to be reported. */
    public record Taken(String path, String key, String meaning, String value, String source) {}

    /** Reads one key; a value that cannot be read stays absent, with its place known. */
    <T> void take(Key<T> key, Node value, Place at) {
        places.put(key, at);
        key.shape().read(value, at).ifPresent(result -> values.put(key, result));
    }

    /** Returns the value of a key: as given, or the key's default. */
    public <T> Optional<T> find(Key<T> key) {
        return given(key)
                .or(() -> isGiven(key) ? Optional.empty() : key.fallback().map(Key.Fallback::value));
    }

    /** Returns the value of a key as given, if it was. */
    public <T> Optional<T> given(Key<T> key) {
        @SuppressWarnings("unchecked") // take() is the only one who puts values, and puts a T for a Key<T>
        T value = (T) values.get(key);
        return Optional.ofNullable(value);
    }

    /**
     * Returns the value of a key that a file without problems is certain to have.
     *
     * @throws IllegalStateException if there is none
     */
    public <T> T get(Key<T> key) {
        return find(key)
                .orElseThrow(() -> new IllegalStateException(place.path() + "." + key.name() + " has no value"));
    }

    /** Returns the same group with another value of one key, as if it had been written so. */
    public <T> Entry with(Key<T> key, T value) {
        Entry other = new Entry(place, keys);
        other.values.putAll(values);
        other.places.putAll(places);
        other.values.put(key, value);
        other.places.put(key, at(key));
        return other;
    }

    /** Tells whether the key was written, well or badly. */
    public boolean isGiven(Key<?> key) {
        return places.containsKey(key);
    }

    /** Returns the place of a key, or of the whole group if the key was not written. */
    public Place at(Key<?> key) {
        return places.getOrDefault(key, place.key(key.name(), place.line()));
    }

    /** Returns the place of the whole group. */
    public Place place() {
        return place;
    }

    /** Returns the defaults that stand in for keys not written and say something about the building. */
    public List<Taken> taken() {
        List<Taken> result = new ArrayList<>();
        for (Key<?> key : keys) {
            if (!isGiven(key)) {
                key.fallback()
                        .filter(fallback -> !fallback.source().isEmpty())
                        .ifPresent(fallback -> result.add(new Taken(
                                place.path(), key.name(), key.meaning(), fallback.words(), fallback.source())));
            }
        }
        return result;
    }
}
