#!/usr/bin/env bash
# self_test.sh GOOD.pdf: does pdf.sh pass a good file and catch each of these broken ones?
# Exit status 0 when it does, 1 when it does not, 64 usage.
set -u
export LC_ALL=C
here=$(dirname -- "$0")

if [ $# -ne 1 ] || [ ! -r "$1" ]; then
  echo "usage: self_test.sh GOOD.pdf" >&2
  exit 64
fi
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT

# Every change keeps the length, so that nothing but the thing itself is wrong.
breaks() { sed "$2" "$good" > "$work/$1.pdf"; }
good=$1
breaks header '1s/%PDF-1.4/%PDF-1.6/'
breaks metadata_part 's/<pdfaid:part>1</<pdfaid:part>2</'
breaks metadata_subtype 's/^\/Subtype \/XML/\/Subtype \/XMP/'
breaks metadata_producer 's/<pdf:Producer>./<pdf:Producer>_/'
breaks font_not_embedded 's/^\/FontFile2 /\/FontFileX /'
breaks font_without_unicode 's/^\/ToUnicode /\/ToUnicodX /'
breaks font_without_set 's/^\/CIDSet /\/CIDSeX /'
breaks intent 's/GTS_PDFA1/GTS_PDFX1/'
breaks annotation 's/^\/F 4/\/F 2/'
breaks identifier 's/^\/ID \[/\/IX [/'
breaks cross_reference 's/^startxref/startxxxx/'
size=$(stat -c %s "$good")
head -c $((size * 2 / 3)) "$good" > "$work/cut.pdf"
: > "$work/empty.pdf"
# Within the first stream behind a quarter of the file.
place=$(grep -abo '^stream' "$good" | awk -F: -v from=$((size / 4)) '$1 > from { print $1 + 12; exit }')
{ head -c "$place" "$good"; printf 'broken stream'; tail -c +$((place + 14)) "$good"; } > "$work/stream.pdf"

status=0
if ! bash "$here/pdf.sh" "$good"; then
  echo "the good file does not pass"
  status=1
fi
report=$(bash "$here/pdf.sh" "$work"/*.pdf "$work/missing.pdf") && {
  echo "no failure reported"
  status=1
}
sed "s|$work/||" <<< "$report"
if grep -q '^good' <<< "$report"; then
  echo "a broken file passes"
  status=1
fi
exit $status
