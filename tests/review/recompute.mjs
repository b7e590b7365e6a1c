// The figures of a debrief, worked out again from the exported track and set-up alone: written from what the
// dictionary of columns says, in pilot units, with none of the program's own code.
const rad = Math.PI / 180;
const fpmOfKt = 1852 / 0.3048 / 60;

// A CSV file of the program's as a list of objects; the first line is the caution. Empty cells are null.
export function readCsv(text) {
    const lines = text.trimEnd().split("\n");
    if (!lines[0].startsWith("# ")) throw new Error("the first line carries no caution");
    const names = lines[1].split(",");
    return lines.slice(2).map((line) => {
        const cells = line.split(",");
        return Object.fromEntries(names.map((name, i) => [name, cells[i] === "" ? null : isNaN(cells[i]) ? cells[i] : Number(cells[i])]));
    });
}

const mean = (values) => values.reduce((sum, value) => sum + value, 0) / values.length;
const scatter = (values) => Math.sqrt(mean(values.map((value) => (value - mean(values)) ** 2)));
const rms = (values) => Math.sqrt(mean(values.map((value) => value * value)));
const percentOf = (points, is) => (100 * points.filter(is).length) / points.length;

function slope(xs, ys) {
    const mx = mean(xs), my = mean(ys);
    const squares = xs.reduce((sum, x) => sum + (x - mx) ** 2, 0);
    return xs.length < 2 || squares === 0 ? 0 : xs.reduce((sum, x, i) => sum + (x - mx) * (ys[i] - my), 0) / squares;
}

// Where a row of values has turned back by more than `least`.
function turns(values, least) {
    const found = [];
    let low = values[0], high = values[0], way = "";
    values.forEach((value, i) => {
        low = Math.min(low, value);
        high = Math.max(high, value);
        const now = way !== "down" && value < high - least ? "down" : way !== "up" && value > low + least ? "up" : "";
        if (!now) return;
        if (way) found.push(i);
        way = now;
        low = high = value;
    });
    return found;
}

function largestStep(points) {
    let most = 0;
    points.forEach((p, i) => {
        for (let j = i - 1; j >= 0 && p.time_s - points[j].time_s <= 2.000001; --j) most = Math.max(most, Math.abs(p.lever_percent - points[j].lever_percent));
    });
    return most;
}

const passes = (points, ft) => points.findIndex((p, i) => i > 0 && points[i - 1].wheel_height_above_threshold_ft > ft && p.wheel_height_above_threshold_ft <= ft);

function judged(setup, p) {
    const speed = p.airspeed_kt - setup.target_speed_kt;
    const sink = p.sink_fpm - p.ground_speed_kt * fpmOfKt * Math.tan(setup.nominal_path_deg * rad);
    const path_in = Math.abs(p.path_deviation_deg) <= setup.tolerance_path_deg || Math.abs(p.path_deviation_ft) <= setup.tolerance_path_ft;
    const speed_in = speed >= -setup.tolerance_slow_kt && speed <= setup.tolerance_fast_kt;
    const sink_in = Math.abs(sink) <= setup.tolerance_sink_fpm;
    return { speed, sink, path_in, speed_in, sink_in, all: path_in && speed_in && sink_in };
}

// Whether any criterion of a gate is missed.
function wrongAt(setup, ft, gate) {
    const limit = (name) => setup[`${ft > 400 ? "far" : ft > 250 ? "gate" : "near"}_${name}`];
    const pathOut = Math.abs(gate.path_deviation_deg) > limit("path_deg") && Math.abs(gate.path_deviation_ft) > limit("path_ft");
    const speedOut = gate.speed_deviation_kt > limit("fast_kt") || gate.speed_deviation_kt < -limit("slow_kt");
    const sinkOut = Math.abs(gate.sink_deviation_fpm) > limit("sink_fpm") || gate.sink_fpm > limit("most_sink_fpm");
    const idle = ft <= 500 && gate.power_percent < setup.idle_power_percent + setup.gate_power_over_idle_percent;
    const noFlap = ft <= 500 && setup.gate_landing_flap === 1 && gate.flap_setting !== setup.landing_flap_setting;
    const unsettled = ft === setup.decision_gate_ft && (gate.pitch_range_deg > setup.gate_pitch_range_deg || gate.lever_step_percent > setup.gate_lever_step_percent);
    return pathOut || speedOut || sinkOut || idle || noFlap || unsettled;
}

// Means over two seconds either side of a time, and what was then; with whether the lesson's tolerance was kept.
function valuesAt(setup, points, time_s, then) {
    const window = points.filter((p) => Math.abs(p.time_s - time_s) <= 2);
    const of = (name) => mean(window.map((p) => p[name]));
    const values = {
        time_s, distance_to_aim_nm: then.distance_to_aim_nm,
        path_deviation_deg: of("path_deviation_deg"), path_deviation_ft: of("path_deviation_ft"),
        white_count: then.white_count,
        airspeed_kt: of("airspeed_kt"), speed_deviation_kt: of("airspeed_kt") - setup.target_speed_kt,
        sink_fpm: of("sink_fpm"), sink_deviation_fpm: mean(window.map((p) => judged(setup, p).sink)),
        power_percent: of("power_percent"), pitch_deg: of("pitch_deg"), stick_percent: of("stick_percent"), trim_percent: of("trim_percent"),
        flap_setting: then.flap_setting,
    };
    const { path_in, speed_in } = judged(setup, { ...values, ground_speed_kt: 0 });
    return { ...values, in_tolerance: Number(path_in && speed_in && Math.abs(values.sink_deviation_fpm) <= setup.tolerance_sink_fpm) };
}

const startOf = (setup, points) => ({ gate: "start", wheel_height_ft: points[0].wheel_height_above_threshold_ft, ...valuesAt(setup, points, points[0].time_s, points[0]) });

function gateOf(setup, points, ft) {
    const at = passes(points, ft);
    const name = { gate: `${ft}_ft`, wheel_height_ft: ft };
    if (at < 0) return name;
    const above = points[at - 1], then = points[at];
    const share = (above.wheel_height_above_threshold_ft - ft) / (above.wheel_height_above_threshold_ft - then.wheel_height_above_threshold_ft);
    const time_s = above.time_s + share * (then.time_s - above.time_s);
    const before = points.slice(0, at + 1).filter((p) => p.time_s >= time_s - 10);
    const trend = (name) => slope(before.map((p) => p.time_s), before.map((p) => p[name]));
    const pitches = before.map((p) => p.pitch_deg);
    const gate = {
        ...name, ...valuesAt(setup, points, time_s, then),
        path_trend_deg_per_s: trend("path_deviation_deg"), speed_trend_kt_per_s: trend("airspeed_kt"), sink_trend_fpm_per_s: trend("sink_fpm"),
        pitch_range_deg: Math.max(...pitches) - Math.min(...pitches),
        lever_step_percent: largestStep(before),
    };
    gate.stable = Number(!wrongAt(setup, ft, gate));
    return gate;
}

export function gatesOf(setup, points) {
    const below = [1000, 500, 300, 200, 50].filter((ft) => points[0].wheel_height_above_threshold_ft > ft);
    return [startOf(setup, points), ...below.map((ft) => gateOf(setup, points, ft))];
}

// The hand over the points for which `counts` holds.
function hand(points, counts) {
    let time = 0, squares = 0;
    points.forEach((p, i) => {
        if (i === 0 || !counts(p)) return;
        const dt = p.time_s - points[i - 1].time_s;
        time += dt;
        squares += (p.stick_percent - points[i - 1].stick_percent) ** 2 / dt;
    });
    const perMinute = (name, least) => (60 * turns(points.map((p) => p[name]), least).filter((i) => counts(points[i])).length) / time;
    let step = 0, run = [];
    for (const p of [...points, null]) {
        if (p && counts(p)) run.push(p);
        else (step = Math.max(step, largestStep(run))), (run = []);
    }
    return {
        stick_reversals_per_min: perMinute("stick_percent", 3), lever_reversals_per_min: perMinute("lever_percent", 2),
        stick_rate_rms_percent_per_s: Math.sqrt(squares / time), largest_lever_step_percent: step,
        pitch_scatter_deg: scatter(points.filter(counts).map((p) => p.pitch_deg)),
    };
}

function bandOf(p) {
    const ft = p.wheel_height_above_threshold_ft;
    if (ft > 500) return p.distance_to_aim_nm > 2 ? "beyond_2_nm" : "2_nm_to_500_ft";
    return ft > 300 ? "500_to_300_ft" : ft > 200 ? "300_to_200_ft" : "200_to_50_ft";
}

export function bandsOf(setup, points) {
    return ["beyond_2_nm", "2_nm_to_500_ft", "500_to_300_ft", "300_to_200_ft", "200_to_50_ft"].map((band) => {
        const inside = points.filter((p) => bandOf(p) === band);
        if (inside.length === 0) return { band, points: 0 };
        const speeds = inside.map((p) => p.airspeed_kt - setup.target_speed_kt);
        const path = inside.map((p) => p.path_deviation_deg), feet = inside.map((p) => p.path_deviation_ft);
        return {
            band, points: inside.length,
            path_bias_deg: mean(path), path_scatter_deg: scatter(path), path_bias_ft: mean(feet), path_scatter_ft: scatter(feet),
            speed_bias_kt: mean(speeds), speed_scatter_kt: scatter(speeds), ...hand(points, (p) => bandOf(p) === band),
        };
    });
}

// Which way the hands have moved since a point: 1 for more height, -1 for less, 0 not yet.
function inputSince(setup, points, from, now) {
    const recent = points.filter((p, i) => i <= from && points[from].time_s - p.time_s <= 1.000001);
    const lever = points[now].lever_percent - points[from].lever_percent;
    const stick = points[now].stick_percent - mean(recent.map((p) => p.stick_percent));
    if (setup.convention !== 1 && Math.abs(lever) >= 2) return Math.sign(lever);
    if (setup.convention !== 0 && Math.abs(stick) >= 5) return Math.sign(stick);
    return 0;
}

export function answersOf(setup, points) {
    const inBand = (p) => Math.abs(p.path_deviation_deg) <= setup.answer_path_deg || Math.abs(p.path_deviation_ft) <= setup.answer_path_ft;
    const state = (p) => (inBand(p) ? "in" : p.path_deviation_deg > 0 ? "high" : "low");
    const answers = [];
    points.forEach((p, i) => {
        const now = state(p);
        if (now === "in" || (i > 0 && state(points[i - 1]) === now)) return;
        const answer = { begin_s: p.time_s, high: Number(now === "high"), reaction_s: null, wrong_way_first: 0, settling_s: null, overshot: 0 };
        const last = answers.at(-1);
        if (last && last.settling_s !== null && last.high !== answer.high && p.time_s - last.begin_s - last.settling_s <= 20.000001) last.overshot = 1;
        const wanted = answer.high ? -1 : 1;
        let moved = false;
        for (let j = i + 1; j < points.length && answer.settling_s === null; ++j) {
            const way = inputSince(setup, points, i, j);
            const elapsed = points[j].time_s - p.time_s;
            if (way && !moved) answer.wrong_way_first = Number(way !== wanted);
            moved ||= way !== 0;
            if (way === wanted && answer.reaction_s === null) answer.reaction_s = elapsed;
            if (state(points[j]) === "in" || points[j].path_deviation_deg > 0 !== (answer.high === 1)) answer.settling_s = elapsed;
        }
        answers.push(answer);
    });
    return answers;
}

function lightCalls(setup, points) {
    const calls = [];
    points.forEach((p, i) => {
        const before = points[i - 1]?.white_count ?? -1, now = p.white_count;
        if (before < 0 || now < 0 || before === now || 2 * now === setup.light_units) return;
        const call = { reaction: null, wrong: false };
        for (let j = i + 1; j < points.length && points[j].time_s - p.time_s <= 5.000001 && call.reaction === null; ++j) {
            const way = inputSince(setup, points, i, j);
            if (way) (call.reaction = points[j].time_s - p.time_s), (call.wrong = way !== (2 * now > setup.light_units ? -1 : 1));
        }
        calls.push(call);
    });
    return calls;
}

// Where the mean flight path about a time meets the aim point's level, feet beyond the aim point.
function impactFt(points, time_s) {
    const window = points.filter((p) => Math.abs(p.time_s - time_s) <= 2);
    const of = (name) => mean(window.map((p) => p[name]));
    const sink = of("sink_fpm");
    if (sink < 0.5 / 0.3048 * 60) return null;
    return (of("eye_height_above_aim_ft") * of("ground_speed_kt") * fpmOfKt) / sink - (of("distance_to_aim_nm") * 1852) / 0.3048;
}

function aimOf(setup, points) {
    const figures = {};
    for (const ft of [500, 300, 200, 100]) {
        const gate = gateOf(setup, points, ft);
        figures[`aim_drift_${ft}_ft`] = gate.time_s === undefined ? null : impactFt(points, gate.time_s);
    }
    const impacts = [];
    let next = 0;
    for (const p of points) {
        if (p.wheel_height_above_threshold_ft > 500 || p.time_s < next - 0.000001) continue;
        next = p.time_s + 1;
        const impact = impactFt(points, p.time_s);
        if (impact !== null) impacts.push(impact);
    }
    figures.aim_wander_ft = impacts.length ? scatter(impacts) : 0;
    const at200 = gateOf(setup, points, 200), at50 = gateOf(setup, points, 50);
    figures.ducking_deg = at200.time_s === undefined || at50.time_s === undefined ? null : at50.path_deviation_deg - at200.path_deviation_deg;
    return figures;
}

function touchdownOf(setup, points, end) {
    const last = points.at(-1);
    if (end !== 1) return { touchdown_beyond_threshold_ft: null, touchdown_beyond_aim_ft: null, sink_at_50_ft_fpm: null, speed_at_50_ft_kt: null };
    const descent = last.sink_fpm / (last.ground_speed_kt * fpmOfKt);
    const x = setup.aim_beyond_threshold_ft - (last.distance_to_aim_nm * 1852) / 0.3048;
    const at = (last.wheel_height_above_threshold_ft + descent * x) / (descent + setup.runway_slope_percent / 100);
    return { touchdown_beyond_threshold_ft: at, touchdown_beyond_aim_ft: at - setup.aim_beyond_threshold_ft, sink_at_50_ft_fpm: last.sink_fpm, speed_at_50_ft_kt: last.airspeed_kt - setup.target_speed_kt };
}

function flapOf(setup, points) {
    let at = points[0].flap_setting === setup.landing_flap_setting ? points[0].wheel_height_above_threshold_ft : null;
    let steps = 0, over = 0;
    points.forEach((p, i) => {
        if (i === 0) return;
        const out = Math.ceil(p.flap_position - 0.5);
        if (out > 0 && p.airspeed_kt > setup[`flap_${out}_limit_kt`]) over += p.time_s - points[i - 1].time_s;
        if (p.flap_setting === points[i - 1].flap_setting) return;
        steps += 1;
        at = p.flap_setting === setup.landing_flap_setting ? p.wheel_height_above_threshold_ft : null;
    });
    const held = points.filter((p) => points.at(-1).time_s - p.time_s <= 30.000001);
    return { landing_flap_at_ft: at, flap_steps: steps, over_flap_speed_s: over, held_stick_percent: mean(held.map((p) => p.stick_percent)) };
}

function worstOf(setup, points) {
    let worst = { worst_at_s: points[0].time_s, worst_tolerances: 0 };
    // On the way back from a start off the path only the speed counts, and the path where it is left farther.
    const back = points.findIndex((p) => judged(setup, p).path_in);
    const leftFt = Math.abs(points[0].path_deviation_ft) + setup.tolerance_path_ft;
    for (const [i, p] of points.entries()) {
        const { speed, sink } = judged(setup, p);
        const allowedFt = Math.max(setup.tolerance_path_ft, Math.abs((p.distance_to_aim_nm * 1852) / 0.3048) * setup.tolerance_path_deg * rad);
        const path = i >= back || Math.abs(p.path_deviation_ft) > leftFt ? Math.abs(p.path_deviation_ft) / allowedFt : 0;
        const times = Math.max(path, Math.abs(speed) / (speed < 0 ? setup.tolerance_slow_kt : setup.tolerance_fast_kt), i >= back ? Math.abs(sink) / setup.tolerance_sink_fpm : 0);
        if (times > worst.worst_tolerances) worst = { worst_at_s: p.time_s, worst_tolerances: times };
    }
    return worst;
}

// How scoring ended: 1 at 50 ft, 2 go-around, 3 ground short of the runway, 4 overflew, 0 not.
export function endOf(setup, points) {
    const last = points.at(-1);
    const x_ft = setup.aim_beyond_threshold_ft - (last.distance_to_aim_nm * 1852) / 0.3048;
    const ground_ft = x_ft > 0 ? (x_ft * setup.runway_slope_percent) / 100 : 0;
    const twoSeconds = points.filter((p) => last.time_s - p.time_s < 1.999);
    const climbing = last.time_s - points[0].time_s > 2 && twoSeconds.every((p) => p.lever_percent >= 95 && p.sink_fpm < -100);
    if (last.go_around_said === 1 || climbing) return 2;
    if (last.wheel_height_above_threshold_ft <= ground_ft) return x_ft < 0 ? 3 : 1;
    if (last.wheel_height_above_threshold_ft <= 50 && x_ft * 0.3048 >= -450) return 1;
    return x_ft > setup.runway_length_ft ? 4 : 0;
}

// How a go-around was flown, from the lever's way up to full; the whole track, with what was flown on.
function goAroundOf(track, end) {
    const names = ["from_ft", "full_power_s", "lowest_ft", "slowest_kt", "most_pitch_deg"].map((name) => `go_around_${name}`);
    const figures = Object.fromEntries(names.map((name) => [name, null]));
    if (end !== 2) return figures;
    const last = track.findLastIndex((p) => p.scored === 1);
    const pushed = track.findLastIndex((p, i) => i <= last && (p.lever_percent < 95 || track[last].time_s - p.time_s >= 10));
    const first = track[Math.max(pushed, 0)];
    const minute = track.slice(Math.max(pushed, 0)).filter((p) => p.time_s - first.time_s <= 60);
    const full = minute.find((p) => p.lever_percent >= 95);
    return {
        go_around_from_ft: first.wheel_height_above_threshold_ft,
        go_around_full_power_s: full ? full.time_s - first.time_s : null,
        go_around_lowest_ft: Math.min(...minute.map((p) => p.wheel_height_above_threshold_ft)),
        go_around_slowest_kt: Math.min(...minute.map((p) => p.airspeed_kt)),
        go_around_most_pitch_deg: Math.max(...minute.map((p) => p.pitch_deg)),
    };
}

// The whole approach, from the whole track.
export function runOf(setup, track) {
    const points = track.filter((p) => p.scored === 1);
    const end = endOf(setup, points);
    const path = points.map((p) => p.path_deviation_deg), feet = points.map((p) => p.path_deviation_ft);
    const speeds = points.map((p) => p.airspeed_kt - setup.target_speed_kt);
    const all = points.map((p) => ({ ...p, ...judged(setup, p) }));
    const off = (p) => !(p.path_in && p.speed_in), high = (p) => p.path_deviation_deg >= 0, fast = (p) => p.speed >= 0;
    const lights = Object.fromEntries([0, 1, 2, 3, 4].map((n) => [`lights_${n}_white_percent`, percentOf(points, (p) => p.white_count === n)]));
    const answers = answersOf(setup, points), answered = answers.filter((a) => a.reaction_s !== null), settled = answers.filter((a) => a.settling_s !== null);
    const calls = lightCalls(setup, points), called = calls.filter((c) => c.reaction !== null);
    const meanOr = (values) => (values.length ? mean(values) : null);
    let lowSlow = 0;
    all.forEach((p, i) => {
        if (i > 0 && !p.path_in && !high(p) && !p.speed_in && !fast(p)) lowSlow += p.time_s - all[i - 1].time_s;
    });
    return {
        end, decision: decisionOf(setup, points, end),
        scored_s: points.at(-1).time_s - points[0].time_s,
        path_bias_deg: mean(path), path_scatter_deg: scatter(path), path_rms_deg: rms(path), path_bias_ft: mean(feet), path_scatter_ft: scatter(feet),
        speed_bias_kt: mean(speeds), speed_scatter_kt: scatter(speeds), speed_rms_kt: rms(speeds),
        path_in_percent: percentOf(all, (p) => p.path_in), speed_in_percent: percentOf(all, (p) => p.speed_in),
        sink_in_percent: percentOf(all, (p) => p.sink_in), all_in_percent: percentOf(all, (p) => p.all),
        ...lights, lights_unseen_percent: percentOf(points, (p) => p.white_count < 0),
        light_changes: points.filter((p, i) => i > 0 && p.white_count !== points[i - 1].white_count).length,
        energy_centre_percent: percentOf(all, (p) => !off(p)),
        high_fast_percent: percentOf(all, (p) => off(p) && high(p) && fast(p)), high_slow_percent: percentOf(all, (p) => off(p) && high(p) && !fast(p)),
        low_fast_percent: percentOf(all, (p) => off(p) && !high(p) && fast(p)), low_slow_percent: percentOf(all, (p) => off(p) && !high(p) && !fast(p)),
        low_and_slow_s: lowSlow, ...hand(points, () => true),
        path_errors: answers.length, path_errors_answered: answered.length, path_reaction_s: meanOr(answered.map((a) => a.reaction_s)),
        path_wrong_way_first: answers.filter((a) => a.wrong_way_first).length, path_settling_s: meanOr(settled.map((a) => a.settling_s)),
        overshoots: answers.filter((a) => a.overshot).length,
        light_calls: calls.length, light_calls_answered: called.length, light_reaction_s: meanOr(called.map((c) => c.reaction)),
        light_wrong_way_first: calls.filter((c) => c.wrong).length,
        ...flapOf(setup, points), ...aimOf(setup, points), ...touchdownOf(setup, points, end), ...worstOf(setup, points),
        ...goAroundOf(track, end),
    };
}

// Continue or go around, by the decision gate: 0 none, 1 right, 2 miss, 3 cautious.
function decisionOf(setup, points, end) {
    const gate = gateOf(setup, points, setup.decision_gate_ft);
    if (points[0].wheel_height_above_threshold_ft <= setup.decision_gate_ft || gate.time_s === undefined) return 0;
    const around = end === 2 && points.at(-1).time_s <= gate.time_s + setup.decision_s;
    return gate.stable ? (around ? 3 : 1) : around ? 1 : 2;
}
