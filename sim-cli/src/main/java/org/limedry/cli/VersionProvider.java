package org.limedry.cli;

import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Tells the version that the build wrote beside this class. */
final class VersionProvider implements IVersionProvider {
    @Override
    public String[] getVersion() throws IOException {
        Properties properties = new Properties();
        try (InputStream in = VersionProvider.class.getResourceAsStream("version.properties")) {
            properties.load(Objects.requireNonNull(in, "version.properties is not on the class path"));
        }
        return new String[] {"limedry " + properties.getProperty("version")};
    }
}
