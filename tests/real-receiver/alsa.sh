#!/usr/bin/env bash
# The console over real ALSA, in an emulated machine with virtual MIDI cards, one of which is unplugged and plugged in again:
#   tests/real-receiver/alsa.sh FOLDER        FOLDER holds a published `warmup`
# About two minutes; functional only, since emulated time is no measure of time. Needs root's package tools but changes nothing on this machine:
# Debian qemu-system-x86, kmod, cpio, librtmidi6, python3; the kernel and busybox are downloaded and unpacked, not installed.
# Exit code 0: all ok, 1: something is not, 77: skipped, with the reason.
set -euo pipefail
here="$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)"
[ $# = 1 ] && [ -x "$1/warmup" ] || { sed -n '2,6s/^# //p' "${BASH_SOURCE[0]}"; exit 1; }
for tool in qemu-system-x86_64 modprobe cpio dpkg apt-get; do
    command -v "$tool" >/dev/null || { echo "skipped: $tool is not installed (Debian: qemu-system-x86 kmod cpio)"; exit 77; }
done
grep -q 'librtmidi\.so' <<<"$(ldconfig -p)" || { echo "skipped: librtmidi6 is not installed"; exit 77; }

cache="${XDG_CACHE_HOME:-$HOME/.cache}/warmup-alsa-machine"
work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
mkdir -p "$cache" "$work/shared"
if [ ! -d "$cache/unpacked" ]; then
    image="$(apt-cache depends linux-image-amd64 | awk '/Depends:/ { print $2; exit }')"
    (cd "$cache" && apt-get download "$image" busybox-static >/dev/null 2>&1) || { echo "skipped: the kernel cannot be downloaded"; exit 77; }
    mkdir "$cache/unpacking"
    for package in "$cache"/*.deb; do dpkg -x "$package" "$cache/unpacking"; done
    mv "$cache/unpacking" "$cache/unpacked"
fi
unpacked="$cache/unpacked"
kernel="$(ls "$unpacked/lib/modules")"
modules="virtio_pci 9pnet_virtio 9p snd-seq snd-seq-midi snd-virmidi"
depmod -b "$unpacked" "$kernel"

# The first root of the machine: busybox, the modules, and a program that mounts this machine's files read-only.
first="$work/first"
mkdir -p "$first/bin" "$first/mnt" "$first/lib/modules/$kernel"
cp "$unpacked/bin/busybox" "$first/bin/"
for module in $modules; do modprobe -d "$unpacked" -S "$kernel" --show-depends "$module" | awk '/^insmod/ { print $2 }'; done | sort -u | while read -r file; do
    within="${file#*"lib/modules/$kernel/"}"
    mkdir -p "$first/lib/modules/$kernel/$(dirname "$within")"
    cp "$unpacked/lib/modules/$kernel/$within" "$first/lib/modules/$kernel/$within"
done
cp "$unpacked/lib/modules/$kernel/modules.order" "$unpacked/lib/modules/$kernel/modules.builtin" "$first/lib/modules/$kernel/"
depmod -b "$first" "$kernel"
cp -r "$1/." "$work/shared/program"
cp -r "$here/../../plans-demo" "$here/alsa.py" "$here/../WarmupConsole.Benchmarks/figures.py" "$work/shared/"
cat >"$first/init" <<INIT
#!/bin/busybox sh
b=/bin/busybox
\$b mkdir -p /proc /sys /dev
\$b mount -t proc p /proc; \$b mount -t sysfs s /sys; \$b mount -t devtmpfs d /dev
for m in $modules; do \$b modprobe \$m; done
o=trans=virtio,version=9p2000.L,msize=262144,cache=loose
\$b mount -t 9p -o \$o,ro host /mnt
for d in dev proc sys; do \$b mount --bind /\$d /mnt/\$d; done
for d in tmp run root; do \$b mount -t tmpfs t /mnt/\$d; done
\$b mkdir -p /mnt/dev/pts /mnt/dev/shm /mnt/tmp/work
\$b mount -t devpts p /mnt/dev/pts; \$b mount -t tmpfs t /mnt/dev/shm
\$b mount -t 9p -o \$o work /mnt/tmp/work
\$b ifconfig lo 127.0.0.1
\$b chroot /mnt /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/tmp WARMUP_PLAN=/tmp/work/plans-demo/plans/2027-02-09.yaml /usr/bin/python3 /tmp/work/alsa.py /tmp/work/program
echo "ended with \$?"
\$b sync; \$b poweroff -f
INIT
chmod +x "$first/init"
(cd "$first" && find . | cpio -o -H newc 2>/dev/null | gzip -1 >"$work/first.gz")

timeout 600 qemu-system-x86_64 -accel tcg,thread=multi -cpu max -m 2048 -smp 2 -nographic -no-reboot -nic none \
    -kernel "$unpacked/boot/vmlinuz-$kernel" -initrd "$work/first.gz" -append "console=ttyS0 quiet panic=-1" \
    -fsdev local,id=h,path=/,security_model=none,readonly=on,multidevs=remap -device virtio-9p-pci,fsdev=h,mount_tag=host \
    -fsdev local,id=w,path="$work/shared",security_model=none -device virtio-9p-pci,fsdev=w,mount_tag=work </dev/null | tr -d '\r' | sed -u 's/\x1b\[[0-9;?]*[a-zA-Z]//g; s/\x1bc//g' | tee "$work/said"
grep -q '^ended with 0' "$work/said"
