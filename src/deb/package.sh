#!/bin/sh
# Makes the packages of leat from what the build left in target: leat_VERSION_ARCH.deb for Debian and its kin, and
# leat-VERSION-linux-ARCH.tar.gz with the same content for others. Run by mvn -B -Pdeb package; by hand:
#   sh src/deb/package.sh VERSION TIME [FOLDER]
# TIME (2026-01-01T00:00:00Z) is the time of every file, so that two builds give the same bytes. JAVA_HOME names the JDK
# whose Java goes into the packages. Needs that JDK's jdeps and jlink, strip (binutils) and, for the .deb, dpkg-dev.
set -eu
version=$1
SOURCE_DATE_EPOCH=$(date -d "$2" +%s); export SOURCE_DATE_EPOCH
LC_ALL=C.UTF-8; export LC_ALL
umask 022
home=$(cd -- "$(dirname -- "$0")/../.." && pwd -P)
target=$home/target
out=${3:-$target}
work=$out/package
cannot() { printf 'package.sh: %s\n' "$*" >&2; exit 1; }
java=${JAVA_HOME:-$(dirname "$(dirname "$(readlink -f "$(command -v javac)")")")}
[ -x "$java/bin/jlink" ] || cannot "$java has no jlink"
machine=$(uname -m)
rm -rf "$work"
mkdir -p "$work"

# The modules in use. Commons CSV names java.sql in methods for the rows of a database, which nobody calls here.
modules=$("$java/bin/jdeps" --multi-release 17 --ignore-missing-deps --print-module-deps "$target/leat.jar")
[ "$modules" = java.base,java.sql ] || cannot "the modules in use are $modules now; see jlink below"

tree=$work/leat-$version
mkdir -p "$tree/bin" "$tree/lib" "$tree/share/doc/leat"
"$java/bin/jlink" --add-modules java.base --strip-debug --compress=1 --no-header-files --no-man-pages --output "$tree/java"
rm "$tree/java/bin/keytool" "$tree/java/lib/jrt-fs.jar"
find "$tree/java" -name '*.so' -exec strip --strip-unneeded '{}' + -o -type f -path '*/bin/java' -exec strip --strip-unneeded '{}' + \
  -o -name jexec -exec strip --strip-unneeded '{}' + -o -name jspawnhelper -exec strip --strip-unneeded '{}' +
cp "$home/scripts/leat" "$tree/bin/"
cp "$target/leat.jar" "$tree/lib/"
# It names jar and Java together: archives of classes made for others are never taken for theirs.
id=$(cd "$tree" && { echo "$version"; find java lib/leat.jar -type f -exec sha256sum '{}' + | sort; } | sha256sum | cut -c1-20)
printf '%s %s\n' "$id" "$(stat -c %s "$tree/lib/leat.jar")" > "$tree/lib/leat.id"
cp -R "$home/examples" "$tree/"
rm -f "$tree"/examples/*.part

doc=$tree/share/doc/leat
for page in "$home"/man/*; do
  section=$tree/share/man/man${page##*.}
  mkdir -p "$section"
  gzip -9nc "$page" > "$section/${page##*/}.gz"
done
completion() { mkdir -p "$tree/share/$2" && cp "$home/scripts/leat-completion.$1" "$tree/share/$2/$3"; }
completion bash bash-completion/completions leat
completion zsh zsh/site-functions _leat
completion fish fish/vendor_completions.d leat.fish
runtime=$(sed -n 's/^JAVA_RUNTIME_VERSION="\(.*\)"/\1/p' "$java/release")
cp "$home/README.md" "$doc/"
sed "s/@JAVA@/$runtime/" "$target/bom/leat.cdx.xml" > "$doc/leat.cdx.xml"
sed "s/@JAVA@/$runtime/" "$target/bom/third-party.txt" > "$doc/third-party.txt"
cat "$home/src/deb/copyright" "$target/bom/copyright.txt" > "$doc/copyright"
sed "s/@VERSION@/$version/; s/@DATE@/$(date -u -R -d "@$SOURCE_DATE_EPOCH")/" "$home/src/deb/changelog" | gzip -9n > "$doc/changelog.gz"

plain() {
  find "$1" \( -type d -o -type f -perm -u+x \) -exec chmod 755 '{}' +
  find "$1" -type f ! -perm -u+x -exec chmod 644 '{}' +
  find "$1" -depth -exec touch -h -d "@$SOURCE_DATE_EPOCH" '{}' +
}
plain "$tree"
tar -C "$work" --sort=name --owner=0 --group=0 --numeric-owner --mtime="@$SOURCE_DATE_EPOCH" -c "leat-$version" | gzip -9n > "$out/leat-$version-linux-$machine.tar.gz"

command -v dpkg-shlibdeps >/dev/null 2>&1 || cannot "dpkg-dev is needed for the .deb; the .tar.gz is made"
arch=$(dpkg --print-architecture)
root=$work/root
mkdir -p "$root/usr/lib" "$root/usr/bin" "$root/usr/share/leat" "$root/var/cache/leat" "$root/DEBIAN"
cp -R "$tree" "$root/usr/lib/leat"
mv "$root/usr/lib/leat/share/"* "$root/usr/share/"
rmdir "$root/usr/lib/leat/share"
mv "$root/usr/share/zsh/site-functions" "$root/usr/share/zsh/vendor-completions"
mv "$root/usr/lib/leat/examples" "$root/usr/share/leat/"
ln -s ../../share/leat/examples "$root/usr/lib/leat/examples"
ln -s ../../leat/examples "$root/usr/share/doc/leat/examples"
ln -s ../lib/leat/bin/leat "$root/usr/bin/leat"
mkdir -p "$work/debian"
printf 'Source: leat\n\nPackage: leat\nArchitecture: any\n' > "$work/debian/control"
needs=$(cd "$work" && find root -type f \( -name '*.so' -o -path '*/java/bin/java' \) -exec dpkg-shlibdeps -O -lroot/usr/lib/leat/java/lib -lroot/usr/lib/leat/java/lib/server '{}' + 2>/dev/null | sed 's/^shlibs:Depends=//')
sed "s/@VERSION@/$version/; s/@ARCH@/$arch/; s/@SIZE@/$(du -sk --apparent-size "$root/usr" | cut -f1)/; s/@NEEDS@/$needs/" "$home/src/deb/control" > "$root/DEBIAN/control"
cp "$home/src/deb/postinst" "$home/src/deb/postrm" "$root/DEBIAN/"
chmod 755 "$root"/DEBIAN/post*
(cd "$root" && find usr -type f | sort | xargs md5sum) > "$root/DEBIAN/md5sums"
plain "$root"
dpkg-deb --root-owner-group -Zxz -z9 --build "$root" "$out/leat_${version}_$arch.deb" >/dev/null
printf '%s bytes  %s\n' $(stat -c '%s %n' "$out/leat_${version}_$arch.deb" "$out/leat-$version-linux-$machine.tar.gz")
printf '%s bytes  unpacked\n' "$(du -sb "$tree" | cut -f1)"
