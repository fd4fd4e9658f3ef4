package org.limedry.cli.page;

import com.github.mustachejava.DefaultMustacheFactory;
import java.io.StringWriter;
import java.io.Writer;

/** Fills the templates that lie beside the classes. */
public final class Templates {
    private static final String ROOT = "org/limedry/cli";

    private Templates() {}

    /**
     * Fills a template. The engine escapes every value; only drawings, which escape their own texts, go in as they are.
     *
     * @param template package and name, "report/report.mustache"
     * @param view what the template sees
     */
    public static String fill(String template, Object view) {
        Writer out = new StringWriter();
        new DefaultMustacheFactory(ROOT).compile(template).execute(out, view);
        return out.toString();
    }
}
