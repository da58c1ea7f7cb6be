#!/usr/bin/env bash
# Slurm on this machine alone, until standard input ends: prints its folder when it is ready, and leaves nothing running and no files.
# Needs root, and Debian's slurmctld, slurmd, slurm-client and munge; no systemd.
set -euo pipefail
folder=$(mktemp -d /tmp/slurm.XXXXXX)
export SLURM_CONF=$folder/slurm.conf
daemons=()

# Whatever Slurm has started has its configuration in the environment.
started() {
    grep -lzsxF "SLURM_CONF=$SLURM_CONF" /proc/[0-9]*/environ | cut -d/ -f3 | grep -vx -e $$ -e $BASHPID || true
}

leave() {
    trap '' INT TERM HUP
    set +e
    for signal in TERM KILL; do
        kill -$signal "${daemons[@]}" $(started) 2>/dev/null
        for ((tenths = 0; tenths < 30; tenths++)); do
            [ -n "$(started)" ] || break 2
            sleep 0.1
        done
    done
    wait
    rm -rf "$folder"
}
trap leave EXIT
trap 'exit 1' INT TERM HUP

free_port() {
    local port
    while port=$((20000 + RANDOM % 20000)) && (: <"/dev/tcp/127.0.0.1/$port") 2>/dev/null; do :; done
    echo "$port"
}

mkdir "$folder/munge" "$folder/state" "$folder/spool"
chmod 755 "$folder"
head -c 128 /dev/urandom >"$folder/munge/munge.key"
chmod 400 "$folder/munge/munge.key"
chown -R munge:munge "$folder/munge"
chmod 711 "$folder/munge"

cat >"$SLURM_CONF" <<END
ClusterName=alone
SlurmctldHost=$(hostname -s)(127.0.0.1)
SlurmUser=root
SlurmctldPort=$(free_port)
SlurmdPort=$(free_port)
AuthType=auth/munge
CredType=cred/munge
# a job that is queued again waits until its old credential has run out
AuthInfo=socket=$folder/munge/socket,cred_expire=5
StateSaveLocation=$folder/state
SlurmdSpoolDir=$folder/spool
SlurmctldPidFile=$folder/slurmctld.pid
SlurmdPidFile=$folder/slurmd.pid
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
JobAcctGatherType=jobacct_gather/none
AccountingStorageType=accounting_storage/none
MpiDefault=none
SwitchType=switch/none
SelectType=select/cons_tres
SelectTypeParameters=CR_Core
SchedulerParameters=bf_interval=1,sched_interval=2
ReturnToService=2
SlurmdParameters=config_overrides
NodeName=$(hostname -s) NodeAddr=127.0.0.1 CPUs=2 RealMemory=8000 State=UNKNOWN
PartitionName=all Nodes=ALL Default=YES MaxTime=INFINITE State=UP
END

setpriv --reuid munge --regid munge --clear-groups munged --foreground --key-file "$folder/munge/munge.key" \
    --socket "$folder/munge/socket" --pid-file "$folder/munge/pid" --log-file "$folder/munge/log" \
    --seed-file "$folder/munge/seed" >"$folder/munged.out" 2>&1 </dev/null &
daemons+=($!)
slurmctld -D -f "$SLURM_CONF" >"$folder/slurmctld.log" 2>&1 </dev/null &
daemons+=($!)
slurmd -D -f "$SLURM_CONF" >"$folder/slurmd.log" 2>&1 </dev/null &
daemons+=($!)

for ((tenths = 0; tenths < 300; tenths++)); do
    if [ "$(sinfo -h -o %T 2>/dev/null)" = idle ]; then
        echo "$folder"
        cat >/dev/null
        exit 0
    fi
    kill -0 "${daemons[@]}" 2>/dev/null || break
    sleep 0.1
done
tail -n 20 "$folder"/*.log "$folder"/*.out "$folder/munge/log" >&2 || true
exit 1
