# Shared by ./trimwright and ./verify: find_java [MAJOR] sets java_home, java_version and java_major to the newest Java
# of 17 or later, or of exactly that major version. Reads the file "release" of each, which costs no start of Java.

java_candidates() {
    printf '%s\n' "${JAVA_HOME:-}"
    local on_path
    if on_path=$(command -v java); then
        on_path=$(readlink -f "$on_path" 2>/dev/null || echo "$on_path")
        dirname "$(dirname "$on_path")"
    fi
    printf '%s\n' /usr/lib/jvm/* "${HOME:-/nonexistent}"/.jdks/* /Library/Java/JavaVirtualMachines/*/Contents/Home
}

find_java() {
    local wanted=${1:-} home version major compiler best_rank=-1 rank
    java_home='' java_version='' java_major=0
    while IFS= read -r home; do
        [ -n "$home" ] && [ -x "$home/bin/java" ] && [ -r "$home/release" ] || continue
        version=$(sed -n 's/^JAVA_VERSION="\(.*\)"/\1/p' "$home/release")
        major=${version%%[.+-]*}
        case "$major" in '' | *[!0-9]*) continue ;; esac
        [ "$major" -ge 17 ] || continue
        [ -z "$wanted" ] || [ "$major" -eq "$wanted" ] || continue
        compiler=0
        [ ! -x "$home/bin/javac" ] || compiler=1
        # With a compiler before without, then the newest.
        rank=$((compiler * 1000 + major))
        if [ "$rank" -gt "$best_rank" ]; then
            best_rank=$rank java_home=$home java_version=$version java_major=$major
        fi
    done <<EOF
$([ -n "${TRIMWRIGHT_JAVA_HOME:-}" ] && printf '%s\n' "$TRIMWRIGHT_JAVA_HOME" || java_candidates)
EOF
    [ -n "$java_home" ]
}
