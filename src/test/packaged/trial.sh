#!/bin/sh
# Tries the packaged program where it meets the system: files, links, modes, pipes, signals, places, Javas. Run by the
# build after packaging; by hand: sh src/test/packaged/trial.sh. Prints a line for each trial that fails and one in the end.
set -u
home=$(cd -- "$(dirname -- "$0")/../../.." && pwd -P)
work=$(mktemp -d)
trap 'chmod -R u+w "$work" 2>/dev/null; rm -rf "$work"' EXIT
failed=0
tried=0
skipped=

# A copy of what a clone needs once it is built, in a place with a space, so that the clone itself is left alone.
clone="$work/a clone"
copy() {
  mkdir -p "$1/target" && cp -R "$home/scripts" "$home/examples" "$1/" && cp "$home/target/leat.jar" "$home/target/leat.id" "$1/target/"
}
copy "$clone"
leat="$clone/scripts/leat"
cd "$work" || exit 1
unset LEAT_PLAN LEAT_UNITS COLUMNS
cp "$home/examples/first-tower.yaml" plan.yaml

ok() { tried=$((tried + 1)); [ "$2" = "$3" ] || { failed=$((failed + 1)); printf 'FAIL %s: expected [%s], got [%s]\n' "$1" "$3" "$2"; }; }
has() { tried=$((tried + 1)); case $2 in *"$3"*) ;; *) failed=$((failed + 1)); printf 'FAIL %s: no [%s] in [%s]\n' "$1" "$3" "$2" ;; esac; }
skip() { skipped="$skipped; $1"; }
mode() { stat -c %a -- "$1"; }

# Eight first runs at once: one makes the archive, all answer.
i=0
while [ $i -lt 8 ]; do "$leat" ec "1.85 mS/cm" --format csv -q >"first$i" 2>&1 & i=$((i + 1)); done
wait
i=1
while [ $i -lt 8 ]; do ok "first run $i" "$(cat "first$i")" "$(cat first0)"; i=$((i + 1)); done
answer=$(cat first0)
has "first run" "$answer" "ec_mS_cm"
ec() { "$leat" ec "1.85 mS/cm" --format csv -q "$@"; }

# Outputs: descriptors, links, modes.
ec -o /dev/stdout > out; ok "-o /dev/stdout" "$(cat out)" "$answer"
ok "/dev/stdout is what it was" "$([ -h /dev/stdout ] && echo link)" "link"
ec -o /proc/self/fd/1 > out; ok "-o /proc/self/fd/1" "$(cat out)" "$answer"
ec -o /dev/fd/7 7> out; ok "-o /dev/fd/7" "$(cat out)" "$answer"
ec -o /dev/null; ok "-o /dev/null" "$? $([ -c /dev/null ] && echo device)" "0 device"
echo old > real; ln -s real link; ec -o link; ok "-o link" "$(cat real) $([ -h link ] && echo link)" "$answer link"
ln -s missing dangling; ec -o dangling; ok "-o on a link to nothing yet" "$(cat missing)" "$answer"
ln -s round1 round2; ln -s round2 round1; ec -o round1 2>err; ok "links in a circle" "$? $(cat err)" "3 round1: its links go round in a circle"
echo old > kept; chmod 600 kept; ec -o kept; ok "mode 600 stays" "$(mode kept)" "600"
echo old > guarded; chmod 444 guarded; ec -o guarded 2>err; ok "write-protected" "$? $(cat guarded) $(cat err)" "3 old guarded: it is write-protected"
ec -o "" 2>err; ok "-o with no name" "$? $(cat err)" "3 --output: a file name is needed"
long=$(printf '%0250d' 0); ec -o "$long"; ok "a name of 250 letters" "$?" "0"; rm -f -- "$long"
ec -o "$long$long" 2>err; ok "a name of 500 letters" "$? $(wc -l < err)" "3 1"
mkfifo pipe; cat pipe > out & ec -o pipe; wait; ok "-o on a pipe" "$(cat out) $([ -p pipe ] && echo pipe)" "$answer pipe"
touch -d '3 days ago' .kept.1.part; touch .kept.2.part; ec -o kept
ok "old drafts are swept, young ones stay" "$(ls -A | grep '^\.kept')" ".kept.2.part"; rm -f .kept.2.part
ec > /dev/full 2>err; ok "full disk" "$? $(cat err)" "3 standard output: the disk is full"
# In a namespace of its own the devices are made anew, a disk is small, and the clone cannot be written even by root.
if unshare -m true 2>/dev/null && mkdir tiny && unshare -m mount -t tmpfs -o size=64k tmpfs tiny 2>/dev/null; then
  ok "a disk that fills up" "$(unshare -m sh -c 'mount -t tmpfs -o size=64k tmpfs tiny; "$1" tank -p plan.yaml --every "0.1 mm" --format csv -q -o tiny/marks.csv 2>err; echo "$? $(cat err) $(ls -A tiny)"' sh "$leat")" "3 tiny/marks.csv: the disk is full "
  ok "devices as root" "$(unshare -m sh -c 'mount -t tmpfs tmpfs /dev; mknod /dev/null c 1 3; mknod /dev/full c 1 7; ln -s /proc/self/fd /dev/fd; ln -s fd/1 /dev/stdout; for o in /dev/null /dev/full /dev/stdout; do "$1" ec "1.85 mS/cm" --format csv -q -o $o; echo $?; done 2>&1; stat -c %F /dev/null /dev/full /dev/stdout' sh "$leat")" "0
/dev/full: the disk is full
3
$answer
0
character special file
character special file
symbolic link"
  copy "$work/sealed"
  ok "a clone that cannot be written, no HOME" "$(unshare -m sh -c 'mount --bind sealed sealed; mount -o remount,ro,bind sealed; env -u HOME -u XDG_CACHE_HOME sealed/scripts/leat ec "1.85 mS/cm" --format csv -q 2>&1; ls sealed/target; ls -d /nonexistent 2>/dev/null' sh)" "$answer
leat.id
leat.jar"
else
  skip "devices, a small disk and a sealed clone in a namespace of their own (needs unshare -m and mount)"
fi
(ulimit -f 1; trap '' XFSZ; "$leat" tank -p plan.yaml --every "1 mm" --format csv -q -o small 2>err; echo $? > code); ok "no room for the file" "$(cat code) $(ls -A | grep small)" "3 "

# Pages and charts: the files beside the classes are in the jar; box characters by the locale.
"$leat" pump -p "$PWD/plan.yaml" --format html -o page.html 2>err; ok "a page" "$? $(wc -c < err)" "0 0"
has "the page holds the plotting library" "$(cat page.html)" "var uPlot="
has "and its licence" "$(cat page.html)" "Permission is hereby granted"
ok "and no folder of this machine" "$(grep -c "$work" page.html)" "0"
has "a chart by the locale" "$(LC_ALL=C.UTF-8 "$leat" pump -p plan.yaml --chart)" "│"
ok "a chart in plain ASCII" "$(LC_ALL=C "$leat" pump -p plan.yaml --chart | LC_ALL=C grep -c '[^ -~]')" "0"

# Inputs.
"$leat" ec --column ec --unit mS/cm < . >out 2>err; ok "a folder as input" "$? $(cat err)" "3 standard input: it cannot be read; is it a folder, or closed?"
"$leat" ec --column ec --unit mS/cm <&- >out 2>err; ok "closed input" "$? $(cat out err)" "2 standard input: there are no rows, not even a header line with the column names"
printf 'ec\n1.8\n' > rows.csv
want=$("$leat" ec --column ec --unit mS/cm --prefix x_ --rows rows.csv)
mkfifo in; cat rows.csv > in & ok "rows from a pipe" "$("$leat" ec --column ec --unit mS/cm --prefix x_ --rows in)" "$want"; wait
ok "rows from /dev/stdin" "$("$leat" ec --column ec --unit mS/cm --prefix x_ --rows /dev/stdin < rows.csv)" "$want"
ok "rows from a descriptor" "$("$leat" ec --column ec --unit mS/cm --prefix x_ --rows /dev/fd/5 5< rows.csv)" "$want"
(printf 'ec\n1.8\n'; sleep 3) | "$leat" ec --column ec --unit mS/cm --prefix x_ > slow & sleep 2
ok "a slow input is answered at once" "$(cat slow)" "$want"; wait

# Pipes that close, signals.
"$leat" tank -p plan.yaml --every "1 mm" --format csv 2>err | head -n 1 >/dev/null; ok "| head" "$(cat err | grep -vc '^Mind\|^Taken\|^  ')" "0"
# LC_ALL=C.UTF-8 does not stop LANGUAGE: with Debian's libc-l10n the C library would speak German.
if [ -f /usr/share/locale/de/LC_MESSAGES/libc.mo ]; then
  (LANGUAGE=de LC_MESSAGES=de_DE.UTF-8 "$leat" tank -p plan.yaml --every "0.1 mm" --format csv; echo $? > code) 2>/dev/null | head -n 1 >/dev/null; ok "| head in German" "$(cat code)" "0"
  ok "German words of the system" "$(LANGUAGE=de LC_ALL=C.UTF-8 "$leat" ec "1.85 mS/cm" -o /nonexistent/x 2>&1; LANGUAGE=de LC_ALL=de_DE.UTF-8 "$leat" ec --column ec --unit mS/cm < . 2>&1)" "/nonexistent/x: there is no folder /nonexistent
standard input: it cannot be read; is it a folder, or closed?"
else
  skip "LANGUAGE=de (needs Debian's libc-l10n)"
fi
mkfifo hold
exec 9<>hold
for pair in "INT 130" "TERM 143" "HUP 129"; do
  env --default-signal=INT "$leat" ec --column ec --unit mS/cm --prefix x_ -o signalled.csv <hold >/dev/null 2>&1 9<&- & run=$!
  waited=0
  until ls -A | grep -q signalled || [ $waited -gt 100 ]; do sleep 0.1; waited=$((waited + 1)); done
  kill -s "${pair% *}" "$run"; wait "$run"
  ok "SIG${pair% *}" "$? $(ls -A | grep -c signalled)" "${pair#* } 0"
done

# Ctrl-C in a long sweep leaves whole rows; nobody watches, so that no progress is shown.
env --default-signal=INT "$leat" sweep plan.yaml --vary "towers[*].riser.bore=9..18 mm step 0.001 mm" --vary "pump.power=10..20 W step 0.01 W" \
  --all --format csv >swept.csv 2>err & run=$!
waited=0
until [ -s swept.csv ] || [ $waited -gt 100 ]; do sleep 0.1; waited=$((waited + 1)); done
kill -s INT "$run"; wait "$run"
ok "Ctrl-C in a sweep" "$? $(cat err)" "130 "
ok "rows of a stopped sweep are whole" "$(tail -c 1 swept.csv | od -An -c | tr -d ' ') $(awk -F, '{ print NF }' swept.csv | sort -u | wc -l)" '\n 1'
exec 9<&-

# Places and environments.
ok "CDPATH" "$(cd "$clone/.." && CDPATH=. "a clone/scripts/leat" ec "1.85 mS/cm" --format csv -q)" "$answer"
mkdir -- "-dash"; ln -s "$clone/scripts" "./-dash/scripts"; ok "a place like a flag" "$(sh -- -dash/scripts/leat ec "1.85 mS/cm" --format csv -q)" "$answer"
copy "$work/co:lon"; ok "a colon in the path" "$("co:lon/scripts/leat" tank -p plan.yaml --level "200 mm" | head -n 1)" "$("$leat" tank -p plan.yaml --level "200 mm" | head -n 1)"
nl="$work/new
line"; copy "$nl"; ok "a line feed in the path" "$("$nl/scripts/leat" ec "1.85 mS/cm" --format csv -q)" "$answer"
ok "bare environment" "$(env -i PATH="$PATH" "$leat" ec "1850 µS/cm" --format csv -q)" "$answer"
ok "a locale that is not installed" "$(LC_ALL=xx_XX.UTF-8 "$leat" ec "1850 µS/cm" --format csv -q)" "$answer"
ok "Turkish" "$(LC_ALL=tr_TR.UTF-8 LANG=tr_TR.UTF-8 "$leat" ec "1.85 mS/cm" --format csv -q)" "$answer"
ok "options of other Javas" "$(JAVA_TOOL_OPTIONS=-XX:+UseG1GC _JAVA_OPTIONS=-Xbogus "$leat" ec "1.85 mS/cm" --format csv -q 2>&1)" "$answer"
if [ "$(id -u)" = 0 ] && command -v setpriv >/dev/null 2>&1; then
  chmod -R a+rX "$work"; chmod a+rx "$work"
  ok "another's clone, no HOME" "$(cd / && env -u HOME setpriv --reuid=65534 --clear-groups -- "$leat" ec "1.85 mS/cm" --format csv -q 2>&1)" "$answer"
  mkdir "$work/cache"; chmod 777 "$work/cache"
  ok "another's clone, a cache of one's own" "$(cd / && XDG_CACHE_HOME="$work/cache" setpriv --reuid=65534 --clear-groups -- "$leat" ec "1.85 mS/cm" --format csv -q 2>&1; ls "$work/cache/leat" | grep -c 'jsa$')" "$answer
1"
else
  skip "a clone that cannot be written (needs root and setpriv)"
fi

# What keeps it from starting.
archive=$(ls "$clone"/target/archives/*-sum.jsa)
truncate -s 100000 "$archive"; ok "a cut-off archive" "$(ec 2>&1)" "$answer"
ok "and it was made anew" "$([ "$(stat -c %s "$archive")" -gt 1000000 ] && echo whole)" "whole"
# Wrong bytes in it, its length right: at most one run is stopped, never with an answer of "no", and nothing is left behind.
chmod u+w "$archive"; dd if=/dev/urandom of="$archive" bs=4096 seek=100 count=700 conv=notrunc 2>/dev/null
mkdir damaged; (cd damaged; ec >../out 2>&1; echo $? > ../code); has "a damaged archive" " 0 3 70 134 " " $(cat code) "
ok "nothing is left in the folder" "$(ls -A damaged)" ""
ok "and the next run answers" "$(ec 2>&1)" "$answer"
# One wrong byte at 20 places of each archive: at most that run is stopped, and the next one answers. Where the JVM itself
# cannot load the main class (about one byte in five hundred) nobody drops the archive: it is taken away by hand.
damage() {
  good=$1; shift
  cp "$good" whole.jsa; cp "$good.size" whole.size; chmod u+w "$good"
  size=$(stat -c %s "$good")
  want=$("$@" 2>&1; echo $?)
  right=0; stopped=0; stuck=0; other=
  i=0
  while [ $i -lt 20 ]; do
    cp whole.jsa "$good"; cp whole.size "$good.size"
    at=$(($(od -An -N4 -tu4 /dev/urandom) % size))
    was=$(od -An -N1 -tu1 -j $at "$good")
    printf "\\$(printf %03o $((was ^ 255)))" | dd of="$good" bs=1 seek=$at conv=notrunc 2>/dev/null
    got=$(cd damaged && "$@" 2>&1; echo $?)
    case $got in
      "$want") right=$((right + 1)) ;;
      *"loading main class"*1)
        stuck=$((stuck + 1)); rm -f "$good"; [ "$("$@" 2>&1; echo $?)" = "$want" ] || other="$other then at $at:$got" ;;
      *3|*134) stopped=$((stopped + 1)); [ "$("$@" 2>&1; echo $?)" = "$want" ] || other="$other then at $at:$got" ;;
      *) other="$other at $at:$got" ;;
    esac
    i=$((i + 1))
  done
  cp whole.jsa "$good"; cp whole.size "$good.size"
  [ $stuck -le 1 ] || other="$other, $stuck stuck"
  ok "a byte of an archive, $right runs right and $stopped stopped of 20" "$other" ""
  ok "nothing is left in the folder of those runs" "$(ls -A damaged)" ""
}
damage "$archive" "$leat" ec "1.85 mS/cm" --format csv -q
"$leat" pump -p "$work/plan.yaml" -q >/dev/null 2>&1
damage "$(ls "$clone"/target/archives/*-plan.jsa)" "$leat" pump -p "$work/plan.yaml" --format csv -q
copy "$work/cut"; truncate -s 500000 "$work/cut/target/leat.jar"; "$work/cut/scripts/leat" ec "1 mS/cm" >out 2>err; ok "a cut-off jar" "$? $(wc -c < out) $(wc -l < err)" "3 0 1"
rm "$work/cut/target/leat.jar"; "$work/cut/scripts/leat" ec "1 mS/cm" >out 2>err; ok "no jar" "$? $(wc -c < out) $(wc -l < err)" "3 0 1"
mkdir -p nojava/bin oldjava/bin; echo hello > nojava/bin/java; chmod +x nojava/bin/java
JAVA_HOME="$work/nojava" "$leat" ec "1 mS/cm" >out 2>err; ok "a Java that is none" "$? $(wc -c < out) $(wc -l < err)" "3 0 1"
cp "$(command -v java)" oldjava/bin/java; printf 'JAVA_VERSION="11.0.2"\n' > oldjava/release
JAVA_HOME="$work/oldjava" "$leat" ec "1 mS/cm" >out 2>err; ok "a Java too old" "$? $(wc -c < out) $(wc -l < err)" "3 0 1"
(ulimit -v 150000; "$leat" ec "1 mS/cm" >out 2>err; echo $? > code); ok "no memory for Java" "$(cat code) $(grep -c '^leat: ' err)" "3 1"
(ulimit -v 12000000; "$leat" ec "1 L" >out 2>err; echo $? > code); ok "a mistake under a limit" "$(cat code)" "2"
second=
for j in /usr/lib/jvm/*/; do
  [ -x "$j/bin/java" ] && [ "$(readlink -f "$j/bin/java")" != "$(readlink -f "$(command -v java)")" ] && grep -q 'JAVA_VERSION="\(1[7-9]\|[2-9]\)' "$j/release" 2>/dev/null && second=$j
done
if [ -z "$second" ] && command -v jlink >/dev/null 2>&1 && jlink --add-modules java.base --output "$work/linked" 2>/dev/null; then
  second=$work/linked
fi
if [ -n "$second" ]; then
  for turn in 1 2; do
    ok "another Java, turn $turn" "$(JAVA_HOME=$second "$leat" ec "1.85 mS/cm" --format csv -q 2>&1)" "$answer"
    ok "the first Java, turn $turn" "$(ec 2>&1)" "$answer"
  done
else
  skip "two Javas in turn (one is installed, and no jlink)"
fi

# Work without bounds.
"$leat" tank -p plan.yaml --every "0.0001 mm" >out 2>err; ok "a dipstick of a million marks" "$? $(wc -l < err)" "2 1"
java=${JAVA_HOME:+$JAVA_HOME/bin/}java
"$java" -Xmx8m -XX:+UseSerialGC -cp "$home/target/leat.jar" leat.Main tank -p plan.yaml --every "0.02 mm" --format json >out 2>err
ok "out of memory" "$? $(cat err)" "2 leat: what is asked does not fit into the memory: ask for fewer rows, marks or steps at a time"
awk 'BEGIN { print "ec"; for (i = 0; i < 300000; i++) print "\"1.8" }' > quotes.csv
start=$(date +%s); "$leat" ec --column ec --unit mS/cm --prefix x_ --rows quotes.csv >out 2>err; code=$?; end=$(date +%s)
ok "rows that each open a quote" "$code $([ $((end - start)) -lt 20 ] && echo soon)" "2 soon"

printf '%s trials of the packaged program, %s failed%s\n' "$tried" "$failed" "${skipped:+; not tried:${skipped#;}}"
[ "$failed" = 0 ]
