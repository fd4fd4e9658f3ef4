package org.limedry.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.limedry.cli.chart.Charts;
import org.limedry.cli.chart.Size;

/** A page as one HTML file that holds all it needs. */
public final class PageHtml {
    private PageHtml() {}

    /** Returns the file's text. */
    public static String of(Page page) {
        return Templates.fill(
                "page/page.mustache",
                new View(
                        page,
                        page.dangers(),
                        page.blocks().stream().map(BlockView::of).toList(),
                        !page.foot().limits().isEmpty()));
    }

    /** What the template sees. */
    private record View(Page page, List<String> dangers, List<BlockView> blocks, boolean hasLimits) {}

    /** One block; one of them is there. */
    private record BlockView(
            Optional<Block.Heading> heading,
            Optional<Paragraph> paragraph,
            Optional<Block.Lines> lines,
            Optional<Block.Cautions> care,
            Optional<FigureView> figure,
            Optional<TableView> table) {
        private static final BlockView NONE = new BlockView(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());

        static BlockView of(Block block) {
            if (block instanceof Block.Heading heading) {
                return NONE.with(heading);
            } else if (block instanceof Block.Words words) {
                return NONE.with(new Paragraph(words.text(), cssClass(words.weight())));
            } else if (block instanceof Block.Lines lines) {
                return NONE.with(lines);
            } else if (block instanceof Block.Cautions cautions) {
                return NONE.with(cautions);
            } else if (block instanceof Block.Figure figure) {
                return NONE.with(FigureView.of(figure));
            } else if (block instanceof Block.Figures figures) {
                return NONE.with(TableView.of(figures.table(), "stack figures"));
            } else if (block instanceof Block.Numbers numbers) {
                return NONE.with(TableView.of(numbers.table(), "figures numbers"));
            }
            throw new AssertionError(block);
        }

        private BlockView with(Object part) {
            return new BlockView(
                    as(part, Block.Heading.class),
                    as(part, Paragraph.class),
                    as(part, Block.Lines.class),
                    as(part, Block.Cautions.class),
                    as(part, FigureView.class),
                    as(part, TableView.class));
        }

        private static <T> Optional<T> as(Object part, Class<T> kind) {
            return Optional.of(part).filter(kind::isInstance).map(kind::cast);
        }

        private static String cssClass(Block.Weight weight) {
            return switch (weight) {
                case PLAIN -> "plain";
                case STRONG -> "why";
                case SMALL -> "small";
            };
        }
    }

    private record Paragraph(String text, String cssClass) {}

    /** A chart in both sizes. */
    private record FigureView(String title, String wide, String narrow, String note) {
        static FigureView of(Block.Figure figure) {
            return new FigureView(
                    figure.chart().title(),
                    Charts.svg(figure.chart(), Size.WIDE),
                    Charts.svg(figure.chart(), Size.NARROW),
                    figure.note());
        }
    }

    private record TableView(String cssClass, String caption, List<Table.Column> columns, List<RowView> rows) {
        static TableView of(Table table, String cssClass) {
            return new TableView(
                    cssClass,
                    table.caption(),
                    table.columns(),
                    table.rows().stream()
                            .map(row -> RowView.of(row, table.columns()))
                            .toList());
        }
    }

    private record RowView(String name, List<CellView> cells) {
        static RowView of(List<String> row, List<Table.Column> columns) {
            List<CellView> cells = new ArrayList<>();
            for (int i = 1; i < row.size(); i++) {
                cells.add(new CellView(
                        row.get(i), columns.get(i).heading(), columns.get(i).number()));
            }
            return new RowView(row.get(0), cells);
        }
    }

    private record CellView(String text, String heading, boolean number) {}
}
