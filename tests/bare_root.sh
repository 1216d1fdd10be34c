#!/usr/bin/env bash
# Both commands in a Debian 12 root with nothing installed: debootstrap into a folder, clone, chroot, run.
# Must be root. Usage: bare_root.sh [COMMAND]    default: bash sample_requests/run
set -eu
cd "$(dirname "$0")/.."
command=${1:-bash sample_requests/run}
root=$(mktemp -d)
chmod 755 "$root"
trap 'umount "$root/proc" 2>/dev/null || true; rm -rf "$root"' EXIT
mirror=$(awk '/^deb /{for(i=2;i<=NF;i++) if($i ~ /^(https?|file):/){print $i; exit}} /^URIs:/{print $2; exit}' \
  /etc/apt/sources.list /etc/apt/sources.list.d/* 2>/dev/null | head -1)
debootstrap --variant=minbase bookworm "$root" $mirror >/dev/null
cp -a /etc/apt/sources.list /etc/apt/sources.list.d /etc/apt/apt.conf.d "$root/etc/apt/" 2>/dev/null || true
cp -a /etc/apt/trusted.gpg.d /etc/apt/keyrings "$root/etc/apt/" 2>/dev/null || true
cp /etc/resolv.conf "$root/etc/resolv.conf"
cp /etc/hosts "$root/etc/hosts"
mkdir -p "$root/swathspec"
git archive HEAD | tar -x -C "$root/swathspec"
mount -t proc proc "$root/proc" 2>/dev/null || true
env -i HOME=/root PATH=/usr/sbin:/usr/bin:/sbin:/bin ${http_proxy:+http_proxy=$http_proxy} \
  ${https_proxy:+https_proxy=$https_proxy} chroot "$root" bash -c "cd /swathspec && $command"
