#!/usr/bin/env bash
# A Slurm job array over the parts of an inbox: one node on loopback with its own munge, all of it in a temporary folder and
# ended at the end. The union of the parts must be what a single run makes, byte for byte. Needs root and the packages of group
# `full`. Usage: run.sh PROGRAM [REQUESTS] [PARTS]
set -u
program=$(realpath "${1:?usage: run.sh PROGRAM [REQUESTS] [PARTS]}")
requests=${2:-60} parts=${3:-4}
here=$(realpath "$(dirname "$0")")
work=$(mktemp -d /tmp/swathspec_slurm.XXXXXX)
chmod 755 "$work"
started=
finish() {
  local code=$? pid
  for pid in $started; do kill "$pid" 2>/dev/null; done
  for pid in $started; do wait "$pid" 2>/dev/null; done
  [ "$code" = 0 ] || tail -n 20 "$work"/*.log
  rm -rf "$work"
  exit "$code"
}
trap finish EXIT
fail() { echo "slurm: $*" >&2; exit 1; }
[ "$(id -u)" = 0 ] || fail "must be root"

mkdir -m 700 "$work/munge" "$work/state" "$work/spool"
mkdir -m 755 "$work/socket"
dd if=/dev/urandom of="$work/munge/key" bs=64 count=1 status=none
chmod 400 "$work/munge/key"
munged --foreground --force --key-file="$work/munge/key" --socket="$work/socket/munge" --log-file="$work/munge.log" \
  --pid-file="$work/munge/pid" --seed-file="$work/munge/seed" >"$work/munged.log" 2>&1 &
started="$!"

node=$(hostname -s)
controller_port=$((20000 + $$ % 20000)) node_port=$((20001 + $$ % 20000))
cat >"$work/slurm.conf" <<END
ClusterName=swathspec
SlurmctldHost=$node(127.0.0.1)
SlurmctldPort=$controller_port
SlurmdPort=$node_port
SlurmUser=root
SlurmdUser=root
AuthType=auth/munge
AuthInfo=socket=$work/socket/munge
CredType=cred/munge
StateSaveLocation=$work/state
SlurmdSpoolDir=$work/spool
SlurmctldPidFile=$work/slurmctld.pid
SlurmdPidFile=$work/slurmd.pid
SlurmctldLogFile=$work/slurmctld.log
SlurmdLogFile=$work/slurmd.log
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
JobAcctGatherType=jobacct_gather/none
AccountingStorageType=accounting_storage/none
SelectType=select/cons_tres
SelectTypeParameters=CR_Core
ReturnToService=2
SlurmdParameters=config_overrides
NodeName=$node NodeAddr=127.0.0.1 CPUs=2 State=UNKNOWN
PartitionName=all Nodes=$node Default=YES MaxTime=INFINITE State=UP
END
printf 'CgroupPlugin=autodetect\nCgroupAutomount=no\n' >"$work/cgroup.conf"
export SLURM_CONF=$work/slurm.conf
for _ in $(seq 50); do [ -S "$work/socket/munge" ] && break; sleep 0.1; done
slurmctld -D -f "$work/slurm.conf" >"$work/ctld_out.log" 2>&1 &
started="$started $!"
slurmd -D -f "$work/slurm.conf" -N "$node" >"$work/slurmd_out.log" 2>&1 &
started="$started $!"
for _ in $(seq 100); do
  [ "$(sinfo -h -o %t 2>/dev/null)" = idle ] && break
  sleep 0.2
done
[ "$(sinfo -h -o %t)" = idle ] || fail "the node did not come up: $(sinfo -h -o '%t %E' 2>&1)"

python3 -B - "$here/../bench" "$work" "$requests" <<'END' || fail "no inbox"
import pathlib, sys
sys.path.insert(0, sys.argv[1])
from inbox import write_inbox
write_inbox(pathlib.Path(sys.argv[2]), int(sys.argv[3]))
END
cd "$work" || exit 1
"$program" build in -c catalogue.xml --date 2026-11-25 -o single >single.txt 2>single.log || fail "the single run"
timeout 600 sbatch --wait --array="1-$parts" --chdir="$work" --output="$work/part_%a.log" \
  --wrap="exec '$program' build in -c catalogue.xml --date 2026-11-25 -o shared -j 1 --part \$SLURM_ARRAY_TASK_ID/$parts" \
  >sbatch.log 2>&1 || fail "the job array"
"$program" index shared || fail "index"
"$program" verify shared || fail "verify"
for log in shared/run.*-of-"$parts".jsonl; do [ -s "$log" ] || fail "$log is empty"; done
[ "$(ls shared/run.*-of-"$parts".jsonl | wc -l)" = "$parts" ] || fail "not every part left its log"
diff -r -x .swathspec -x 'run*.jsonl' single shared || fail "the union differs from the single run"
echo "slurm: $parts parts of a job array make the $(ls single/*.pdf | wc -l) documents of a single run, byte for byte"
