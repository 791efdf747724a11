#!/bin/sh
# Tries the Debian package on a clean root: install, every line of the README, pages, completion, users, archives, upgrade,
# remove. Run by mvn -B -Pdeb verify; by hand, as root, after mvn -B -Pdeb package -DskipTests:
#   sh src/test/packaged/deb.sh
# LEAT_ROOT=FILE.tar keeps the clean root between runs. Prints a line for each trial that fails and one in the end.
set -u
home=$(cd -- "$(dirname -- "$0")/../../.." && pwd -P)
deb=$(ls "$home"/target/leat_*.deb 2>/dev/null) || { echo "no package in target: mvn -B -Pdeb package -DskipTests makes it" >&2; exit 1; }
for tool in mmdebstrap dpkg-deb; do
  command -v "$tool" >/dev/null 2>&1 || { echo "the Debian package was not tried on a clean root: it needs $tool"; exit 0; }
done
[ "$(id -u)" = 0 ] || { echo "the Debian package was not tried on a clean root: that needs root"; exit 0; }
work=$(mktemp -d)
root=$work/root
trap 'umount "$root/proc" 2>/dev/null; rm -rf "$work"' EXIT
trap 'exit 130' INT TERM HUP
failed=0
tried=0
ok() { tried=$((tried + 1)); [ "$2" = "$3" ] || { failed=$((failed + 1)); printf 'FAIL %s: expected [%s], got [%s]\n' "$1" "$3" "$2"; }; }
has() { tried=$((tried + 1)); case $2 in *"$3"*) ;; *) failed=$((failed + 1)); printf 'FAIL %s: no [%s] in [%s]\n' "$1" "$3" "$2" ;; esac; }
in_root() { chroot "$root" env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LANG=C.UTF-8 DEBIAN_FRONTEND=noninteractive "$@"; }
grower() { in_root setpriv --reuid=grower --regid=grower --clear-groups env HOME=/home/grower "$@"; }
archives() { ls "$1" | grep -c 'jsa$'; }

# The root, from where this machine takes its own packages.
tar=${LEAT_ROOT:-$work/root.tar}
if [ ! -f "$tar" ]; then
  . /etc/os-release
  mirror=$(apt-get indextargets --format '$(SITE) $(RELEASE)' 'Created-By: Packages' | awk -v release="$VERSION_CODENAME" '$2 == release { print $1; exit }')
  mmdebstrap --quiet --variant=minbase --include=man-db,bash-completion "$VERSION_CODENAME" "$tar" "$mirror" || exit 1
fi
mkdir "$root" && tar -C "$root" -xf "$tar" --exclude='./dev/*' && mkdir -p "$root/dev" || exit 1
for device in null zero full random urandom; do cp -a "/dev/$device" "$root/dev/"; done
ln -s /proc/self/fd "$root/dev/fd"
mount -t proc proc "$root/proc" 2>/dev/null || echo "without /proc: it cannot be mounted here"
in_root useradd -m grower
cp "$deb" "$root/tmp/leat.deb"
before=$work/before
everything() { (cd "$root" && find . -xdev \( -path ./proc -o -path ./tmp -o -path ./home -o -path ./var/lib/dpkg -o -path ./var/log -o -path ./var/cache/man -o -path ./var/cache/ldconfig \) -prune -o -print | sort); }
everything > "$before"

# An older one first: the same with another version, other archives and a file that is gone today.
dpkg-deb -R "$deb" "$work/old"
sed -i 's/^Version: .*/Version: 0.0.1/' "$work/old/DEBIAN/control"
sed -i 's/^/old/' "$work/old/usr/lib/leat/lib/leat.id"
echo old > "$work/old/usr/lib/leat/gone"
dpkg-deb --root-owner-group -Zgzip -z1 --build "$work/old" "$root/tmp/old.deb" >/dev/null
in_root dpkg -i /tmp/old.deb >"$work/log" 2>&1; ok "install the older" "$?" 0
ok "archives of the older" "$(archives "$root/var/cache/leat")" 3
in_root dpkg -i /tmp/leat.deb >"$work/log" 2>&1; ok "upgrade" "$?" 0
has "upgrade says so" "$(cat "$work/log")" "over (0.0.1)"
ok "nothing of the older is left" "$(ls "$root/var/cache/leat" | grep -c '^old') $([ -e "$root/usr/lib/leat/gone" ] && echo there)" "0 "
ok "archives" "$(archives "$root/var/cache/leat")" 3
ok "unpacked size, archives made" "$(du -sbc "$root/usr/lib/leat" "$root/usr/share/leat" "$root/usr/share/doc/leat" "$root/var/cache/leat" | awk 'END { print ($1 < 65e6) }')" 1
ok "package size" "$(stat -c %s "$deb" | awk '{ print ($1 < 20e6) }') $(awk '/^Installed-Size/ { print ($2 < 45000) }' "$work/old/DEBIAN/control")" "1 1"

# The README, run by a user in a copy of the examples.
in_root cp -r /usr/share/doc/leat/examples/ /home/grower/examples && in_root chown -R grower: /home/grower/examples
awk '/^```/ { inside = !inside; next } inside && /^\$ leat / { show = 1 } inside && show { print } !inside { if (show) print "" ; show = 0 }' "$home/README.md" > "$work/shown"
{
  echo 'cd /home/grower/examples || exit 1'
  awk '/^\$ leat / { line = substr($0, 3); quoted = line; gsub(/\047/, "\047\\\047\047", quoted); print "printf \047%s\\n\047 \047$ " quoted "\047"; print "{ " line "; } 2>err; cat err; echo" }' "$work/shown"
} > "$root/tmp/readme.sh"
grower sh /tmp/readme.sh > "$work/ran"
ok "README has lines" "$(grep -c '^\$ leat ' "$work/shown" | awk '{ print ($1 > 4) }')" 1
tried=$((tried + 1))
diff "$work/shown" "$work/ran" > "$work/diff" || { failed=$((failed + 1)); echo "FAIL README: its lines answer otherwise"; head -n 20 "$work/diff"; }

# A user who is not root: archives of the package are used, none of his own is made.
ok "a user has no cache" "$([ -e "$root/home/grower/.cache" ] && echo there)" ""
answer=$(grower leat ec "1.85 mS/cm" --format csv -q)
has "answer" "$answer" "ec_mS_cm"
ok "another Java is no matter" "$(grower env JAVA_HOME=/nowhere /usr/bin/leat ec "1.85 mS/cm" --format csv -q)" "$answer"
rm -r "$root/var/cache/leat"
ok "without archives" "$(grower leat ec "1.85 mS/cm" --format csv -q)" "$answer"
ok "his own are made" "$(archives "$root/home/grower/.cache/leat")" 2
in_root leat ec "1.85 mS/cm" >/dev/null 2>&1
ok "those of all are made anew by root" "$(archives "$root/var/cache/leat")" 2
in_root leat tank -p /usr/share/leat/examples/first-tower.yaml --level "200 mm" >/dev/null 2>&1
base=$(ls "$root"/var/cache/leat/*base.jsa)
truncate -s 100000 "$base"
ok "a cut-off archive" "$(in_root leat ec "1.85 mS/cm" --format csv -q)" "$answer"
ok "is made anew" "$(stat -c %s "$base" | awk '{ print ($1 > 1e6) }') $(archives "$root/var/cache/leat")" "1 2"
has "what is in force" "$(grower leat --version -v)" "/var/cache/leat"

# Pages and completion.
ok "a page" "$(grower man leat-head 2>"$work/err" | head -n 1 | cut -c1-9) $(cat "$work/err")" "LEAT-HEAD "
ok "every page" "$(ls "$root"/usr/share/man/man?/leat*.gz | wc -l)" "$(ls "$home"/man | wc -l)"
has "whatis" "$(in_root sh -c 'mandb -q; whatis leat-plan')" "leat-plan"
ok "completion of bash" "$(grower bash -c '. /usr/share/bash-completion/bash_completion; _completion_loader leat; COMP_WORDS=(leat ch); COMP_CWORD=1; COMP_LINE="leat ch"; COMP_POINT=7; $(complete -p leat | sed "s/.*-F \([^ ]*\).*/\1/") leat ch leat; printf %s "${COMPREPLY[0]}"')" "check"
ok "completion of zsh and fish" "$(head -n 1 "$root/usr/share/zsh/vendor-completions/_leat" | cut -c1-8) $(grep -c 'complete -c leat' "$root/usr/share/fish/vendor_completions.d/leat.fish" | awk '{ print ($1 > 100) }')" "#compdef 1"
has "third parties" "$(cat "$root/usr/share/doc/leat/third-party.txt")" "OpenJDK 1"
has "bill of materials" "$(cat "$root/usr/share/doc/leat/leat.cdx.xml")" "pkg:maven/info.picocli/picocli@"
ok "no place for a version is left open" "$(grep -l '@[A-Z]*@' "$root"/usr/share/doc/leat/[a-z]*[a-z] 2>/dev/null | wc -l)" 0

in_root dpkg --remove leat >"$work/log" 2>&1; ok "remove" "$?" 0
has "no complaint" "[$(grep -ci 'not empty\|warning' "$work/log")]" "[0]"
everything > "$work/after"
ok "nothing is left" "$(diff "$before" "$work/after")" ""
in_root dpkg -i /tmp/leat.deb >"$work/log" 2>&1; ok "install on a clean root" "$?" 0
in_root dpkg --purge leat >"$work/log" 2>&1; ok "purge" "$?" 0
everything > "$work/after"
ok "nothing is left of it" "$(diff "$before" "$work/after")" ""

printf '%s trials of the Debian package on a clean root, %s failed\n' "$tried" "$failed"
[ "$failed" = 0 ]
