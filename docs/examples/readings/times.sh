#!/bin/sh
# Times of `limedry readings` by number of lines, on made-up readings ten minutes apart.
# Usage: times.sh path/to/limedry.jar [LINES...]
set -eu
jar=$1
shift
[ $# -gt 0 ] || set -- 1000 10000 100000 1000000
folder=$(mktemp -d)
trap 'rm -r "$folder"' EXIT
for lines in "$@"; do
    TZ=UTC awk -v n="$lines" 'BEGIN {
        srand(1); print "timestamp,T,RH"
        for (i = 0; i < n; i++)
            printf "%s,%.2f,%.1f\n", strftime("%Y-%m-%d %H:%M:%S", 946684800 + 600 * i, 1),
                8 + 2 * sin(i / 72) + rand() / 5, 84 + 5 * cos(i / 70) + rand()
    }' > "$folder/$lines.csv"
    echo "$lines lines"
    ( time -p java -Xmx512m -jar "$jar" readings "$folder/$lines.csv" --zone UTC > /dev/null ) 2>&1
done
