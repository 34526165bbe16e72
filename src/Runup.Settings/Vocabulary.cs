namespace Runup.Settings;

/// <summary>The vocabulary: every make-independent setting by name.</summary>
public sealed partial record Setting
{
    /// <summary><c>motor-rated-power</c>: shaft output on the plate, for the connection in use.</summary>
    public static Setting MotorRatedPower { get; } = Numeric("motor-rated-power", "shaft output on the plate, for the connection in use", "W", 1);

    /// <summary><c>motor-rated-voltage</c>: line to line, connection in use.</summary>
    public static Setting MotorRatedVoltage { get; } = Numeric("motor-rated-voltage", "line to line, connection in use", "V", 1);

    /// <summary><c>motor-rated-current</c>: line current, connection in use.</summary>
    public static Setting MotorRatedCurrent { get; } = Numeric("motor-rated-current", "line current, connection in use", "A", 1);

    /// <summary><c>motor-rated-frequency</c>: frequency on the plate.</summary>
    public static Setting MotorRatedFrequency { get; } = Numeric("motor-rated-frequency", "frequency on the plate", "Hz", 1);

    /// <summary><c>motor-rated-speed</c>: full-load speed on the plate.</summary>
    public static Setting MotorRatedSpeed { get; } = Numeric("motor-rated-speed", "full-load speed on the plate", "rpm", Math.PI / 30);

    /// <summary><c>motor-power-factor</c>: full-load power factor.</summary>
    public static Setting MotorPowerFactor { get; } = Numeric("motor-power-factor", "full-load power factor", "1", 1);

    /// <summary><c>motor-pole-count</c>: poles, not pairs.</summary>
    public static Setting MotorPoleCount { get; } = Numeric("motor-pole-count", "poles, not pairs", "1", 1);

    /// <summary><c>motor-connection</c>: connection of the winding in use.</summary>
    public static Setting MotorConnection { get; } = OneOf("motor-connection", "connection of the winding in use", "star", "delta");

    /// <summary><c>base-frequency</c>: where V/f reaches maximum-output-voltage.</summary>
    public static Setting BaseFrequency { get; } = Numeric("base-frequency", "where V/f reaches maximum-output-voltage", "Hz", 1);

    /// <summary><c>maximum-output-voltage</c>: line to line, at and above base frequency.</summary>
    public static Setting MaximumOutputVoltage { get; } = Numeric("maximum-output-voltage", "line to line, at and above base frequency", "V", 1);

    /// <summary><c>maximum-frequency</c>: highest output frequency.</summary>
    public static Setting MaximumFrequency { get; } = Numeric("maximum-frequency", "highest output frequency", "Hz", 1);

    /// <summary><c>minimum-frequency</c>: lowest running output frequency.</summary>
    public static Setting MinimumFrequency { get; } = Numeric("minimum-frequency", "lowest running output frequency", "Hz", 1);

    /// <summary><c>vf-characteristic</c>: shape of voltage against frequency.</summary>
    public static Setting VfCharacteristic { get; } = OneOf("vf-characteristic", "shape of voltage against frequency", "linear", "quadratic", "points");

    /// <summary><c>torque-boost</c>: of rated voltage, added at 0 Hz, falling to 0 at base frequency.</summary>
    public static Setting TorqueBoost { get; } = Numeric("torque-boost", "of rated voltage, added at 0 Hz, falling to 0 at base frequency", "%", 0.01);

    /// <summary><c>acceleration-time</c>: 0 to maximum frequency at a constant rate.</summary>
    public static Setting AccelerationTime { get; } = Numeric("acceleration-time", "0 to maximum frequency at a constant rate", "s", 1);

    /// <summary><c>deceleration-time</c>: maximum frequency to 0 at a constant rate.</summary>
    public static Setting DecelerationTime { get; } = Numeric("deceleration-time", "maximum frequency to 0 at a constant rate", "s", 1);

    /// <summary><c>second-acceleration-time</c>: as acceleration-time, for the second ramps.</summary>
    public static Setting SecondAccelerationTime { get; } = Numeric("second-acceleration-time", "as acceleration-time, for the second ramps", "s", 1);

    /// <summary><c>second-deceleration-time</c>: as deceleration-time, for the second ramps.</summary>
    public static Setting SecondDecelerationTime { get; } = Numeric("second-deceleration-time", "as deceleration-time, for the second ramps", "s", 1);

    /// <summary><c>s-curve</c>: rounding at each end of a ramp.</summary>
    public static Setting SCurve { get; } = Numeric("s-curve", "rounding at each end of a ramp", "s", 1);

    /// <summary><c>current-limit</c>: output current, motoring.</summary>
    public static Setting CurrentLimit { get; } = Numeric("current-limit", "output current, motoring", "A", 1);

    /// <summary><c>motor-overload-current</c>: current of the thermal model.</summary>
    public static Setting MotorOverloadCurrent { get; } = Numeric("motor-overload-current", "current of the thermal model", "A", 1);

    /// <summary><c>overload-trip-class</c>: trip class of IEC 60947-4-1.</summary>
    public static Setting OverloadTripClass { get; } = OneOf("overload-trip-class", "trip class of IEC 60947-4-1", "5", "10A", "10", "20", "30");

    /// <summary><c>motor-cooling</c>: how the motor is cooled.</summary>
    public static Setting MotorCooling { get; } = OneOf("motor-cooling", "how the motor is cooled", "shaft-fan", "separate-fan");

    /// <summary><c>overvoltage-control</c>: stretches deceleration as the DC bus rises.</summary>
    public static Setting OvervoltageControl { get; } = OneOf("overvoltage-control", "stretches deceleration as the DC bus rises", "on", "off");

    /// <summary><c>braking-chopper</c>: chopper in use.</summary>
    public static Setting BrakingChopper { get; } = OneOf("braking-chopper", "chopper in use", "on", "off");

    /// <summary><c>braking-resistor-resistance</c>: ohms of the braking resistor.</summary>
    public static Setting BrakingResistorResistance { get; } = Numeric("braking-resistor-resistance", "ohms of the braking resistor", "Ω", 1);

    /// <summary><c>braking-resistor-power</c>: continuous power of the braking resistor.</summary>
    public static Setting BrakingResistorPower { get; } = Numeric("braking-resistor-power", "continuous power of the braking resistor", "W", 1);

    /// <summary><c>undervoltage-ride-through</c>: keeps the DC bus alive from the load's energy.</summary>
    public static Setting UndervoltageRideThrough { get; } = OneOf("undervoltage-ride-through", "keeps the DC bus alive from the load's energy", "off", "on");

    /// <summary><c>phase-loss</c>: supply phase.</summary>
    public static Setting PhaseLoss { get; } = OneOf("phase-loss", "supply phase", "trip", "warn", "off");

    /// <summary><c>output-phase-loss</c>: motor phase.</summary>
    public static Setting OutputPhaseLoss { get; } = OneOf("output-phase-loss", "motor phase", "trip", "warn", "off");

    /// <summary><c>earth-fault</c>: earth fault at the output.</summary>
    public static Setting EarthFault { get; } = OneOf("earth-fault", "earth fault at the output", "trip", "warn", "off");

    /// <summary><c>motor-thermal-sensor</c>: sensor in the winding.</summary>
    public static Setting MotorThermalSensor { get; } = OneOf("motor-thermal-sensor", "sensor in the winding", "none", "ptc", "switch");

    /// <summary><c>underload</c>: what follows when the load is lost.</summary>
    public static Setting Underload { get; } = OneOf("underload", "what follows when the load is lost", "trip", "warn", "off");

    /// <summary><c>underload-level</c>: of rated torque.</summary>
    public static Setting UnderloadLevel { get; } = Numeric("underload-level", "of rated torque", "%", 0.01);

    /// <summary><c>underload-delay</c>: how long below the level.</summary>
    public static Setting UnderloadDelay { get; } = Numeric("underload-delay", "how long below the level", "s", 1);

    /// <summary><c>control-method</c>: how the motor is controlled.</summary>
    public static Setting ControlMethod { get; } = OneOf("control-method", "how the motor is controlled", "vf", "sensorless-vector", "encoder-vector");

    /// <summary><c>slip-compensation</c>: 100 is full rated slip at rated torque.</summary>
    public static Setting SlipCompensation { get; } = Numeric("slip-compensation", "100 is full rated slip at rated torque", "%", 0.01);

    /// <summary><c>switching-frequency</c>: of the inverter.</summary>
    public static Setting SwitchingFrequency { get; } = Numeric("switching-frequency", "of the inverter", "kHz", 1000);

    /// <summary><c>skip-frequency-1</c>: centre of a skipped band.</summary>
    public static Setting SkipFrequency1 { get; } = Numeric("skip-frequency-1", "centre of a skipped band", "Hz", 1);

    /// <summary><c>skip-frequency-2</c>: centre of a skipped band.</summary>
    public static Setting SkipFrequency2 { get; } = Numeric("skip-frequency-2", "centre of a skipped band", "Hz", 1);

    /// <summary><c>skip-frequency-3</c>: centre of a skipped band.</summary>
    public static Setting SkipFrequency3 { get; } = Numeric("skip-frequency-3", "centre of a skipped band", "Hz", 1);

    /// <summary><c>skip-width</c>: full width of the skipped bands.</summary>
    public static Setting SkipWidth { get; } = Numeric("skip-width", "full width of the skipped bands", "Hz", 1);

    /// <summary><c>skip-width-1</c>: full width of the first skipped band.</summary>
    public static Setting SkipWidth1 { get; } = Numeric("skip-width-1", "full width of the first skipped band", "Hz", 1);

    /// <summary><c>skip-width-2</c>: full width of the second skipped band.</summary>
    public static Setting SkipWidth2 { get; } = Numeric("skip-width-2", "full width of the second skipped band", "Hz", 1);

    /// <summary><c>skip-width-3</c>: full width of the third skipped band.</summary>
    public static Setting SkipWidth3 { get; } = Numeric("skip-width-3", "full width of the third skipped band", "Hz", 1);

    /// <summary><c>stopping-method</c>: how a stop is made.</summary>
    public static Setting StoppingMethod { get; } = OneOf("stopping-method", "how a stop is made", "ramp", "coast", "dc-braking");

    /// <summary><c>dc-braking-current</c>: of motor rated current.</summary>
    public static Setting DcBrakingCurrent { get; } = Numeric("dc-braking-current", "of motor rated current", "%", 0.01);

    /// <summary><c>dc-braking-time</c>: length of DC braking.</summary>
    public static Setting DcBrakingTime { get; } = Numeric("dc-braking-time", "length of DC braking", "s", 1);

    /// <summary><c>dc-braking-frequency</c>: DC braking begins below this frequency.</summary>
    public static Setting DcBrakingFrequency { get; } = Numeric("dc-braking-frequency", "DC braking begins below this frequency", "Hz", 1);

    /// <summary><c>flying-restart</c>: catches a spinning motor.</summary>
    public static Setting FlyingRestart { get; } = OneOf("flying-restart", "catches a spinning motor", "on", "off");

    /// <summary><c>restart-after-power-loss</c>: starts by itself when power returns.</summary>
    public static Setting RestartAfterPowerLoss { get; } = OneOf("restart-after-power-loss", "starts by itself when power returns", "off", "on");

    /// <summary><c>automatic-reset</c>: attempts.</summary>
    public static Setting AutomaticReset { get; } = Numeric("automatic-reset", "attempts", "1", 1);

    /// <summary><c>automatic-reset-delay</c>: between attempts.</summary>
    public static Setting AutomaticResetDelay { get; } = Numeric("automatic-reset-delay", "between attempts", "s", 1);

    /// <summary><c>permitted-direction</c>: directions in which the motor may turn.</summary>
    public static Setting PermittedDirection { get; } = OneOf("permitted-direction", "directions in which the motor may turn", "forward", "both");

    /// <summary><c>run-command-source</c>: where the run command comes from.</summary>
    public static Setting RunCommandSource { get; } = OneOf("run-command-source", "where the run command comes from", "panel", "terminals", "bus");

    /// <summary><c>frequency-reference-source</c>: where the frequency reference comes from.</summary>
    public static Setting FrequencyReferenceSource { get; } = OneOf("frequency-reference-source", "where the frequency reference comes from", "panel", "analogue-1", "analogue-2", "bus", "fixed", "process");

    /// <summary><c>analogue-input-1-type</c>: signal.</summary>
    public static Setting AnalogueInput1Type { get; } = OneOf("analogue-input-1-type", "signal", "0..10 V", "0..20 mA", "4..20 mA");

    /// <summary><c>analogue-input-1-minimum</c>: low end of the signal.</summary>
    public static Setting AnalogueInput1Minimum { get; } = Numeric("analogue-input-1-minimum", "low end of the signal", "%", 0.01);

    /// <summary><c>analogue-input-1-maximum</c>: high end of the signal.</summary>
    public static Setting AnalogueInput1Maximum { get; } = Numeric("analogue-input-1-maximum", "high end of the signal", "%", 0.01);

    /// <summary><c>analogue-input-1-minimum-frequency</c>: frequency at the low end.</summary>
    public static Setting AnalogueInput1MinimumFrequency { get; } = Numeric("analogue-input-1-minimum-frequency", "frequency at the low end", "Hz", 1);

    /// <summary><c>analogue-input-1-maximum-frequency</c>: frequency at the high end.</summary>
    public static Setting AnalogueInput1MaximumFrequency { get; } = Numeric("analogue-input-1-maximum-frequency", "frequency at the high end", "Hz", 1);

    /// <summary><c>analogue-input-1-filter</c>: time constant.</summary>
    public static Setting AnalogueInput1Filter { get; } = Numeric("analogue-input-1-filter", "time constant", "s", 1);

    /// <summary><c>analogue-input-1-loss-action</c>: when the signal is lost.</summary>
    public static Setting AnalogueInput1LossAction { get; } = OneOf("analogue-input-1-loss-action", "when the signal is lost", "stop", "hold", "fixed", "off");

    /// <summary><c>analogue-input-2-type</c>: signal.</summary>
    public static Setting AnalogueInput2Type { get; } = OneOf("analogue-input-2-type", "signal", "0..10 V", "0..20 mA", "4..20 mA");

    /// <summary><c>analogue-input-2-minimum</c>: low end of the signal.</summary>
    public static Setting AnalogueInput2Minimum { get; } = Numeric("analogue-input-2-minimum", "low end of the signal", "%", 0.01);

    /// <summary><c>analogue-input-2-maximum</c>: high end of the signal.</summary>
    public static Setting AnalogueInput2Maximum { get; } = Numeric("analogue-input-2-maximum", "high end of the signal", "%", 0.01);

    /// <summary><c>analogue-input-2-minimum-frequency</c>: frequency at the low end.</summary>
    public static Setting AnalogueInput2MinimumFrequency { get; } = Numeric("analogue-input-2-minimum-frequency", "frequency at the low end", "Hz", 1);

    /// <summary><c>analogue-input-2-maximum-frequency</c>: frequency at the high end.</summary>
    public static Setting AnalogueInput2MaximumFrequency { get; } = Numeric("analogue-input-2-maximum-frequency", "frequency at the high end", "Hz", 1);

    /// <summary><c>analogue-input-2-filter</c>: time constant.</summary>
    public static Setting AnalogueInput2Filter { get; } = Numeric("analogue-input-2-filter", "time constant", "s", 1);

    /// <summary><c>analogue-input-2-loss-action</c>: when the signal is lost.</summary>
    public static Setting AnalogueInput2LossAction { get; } = OneOf("analogue-input-2-loss-action", "when the signal is lost", "stop", "hold", "fixed", "off");

    /// <summary><c>analogue-output-1-function</c>: what the output shows.</summary>
    public static Setting AnalogueOutput1Function { get; } = OneOf("analogue-output-1-function", "what the output shows", "output-frequency", "output-current", "output-voltage", "torque", "dc-bus-voltage", "speed");

    /// <summary><c>analogue-output-1-scale</c>: full scale of the output against its rated value.</summary>
    public static Setting AnalogueOutput1Scale { get; } = Numeric("analogue-output-1-scale", "full scale of the output against its rated value", "%", 0.01);

    /// <summary><c>analogue-output-2-function</c>: what the output shows.</summary>
    public static Setting AnalogueOutput2Function { get; } = OneOf("analogue-output-2-function", "what the output shows", "output-frequency", "output-current", "output-voltage", "torque", "dc-bus-voltage", "speed");

    /// <summary><c>analogue-output-2-scale</c>: full scale of the output against its rated value.</summary>
    public static Setting AnalogueOutput2Scale { get; } = Numeric("analogue-output-2-scale", "full scale of the output against its rated value", "%", 0.01);

    /// <summary><c>digital-input-1</c>: function of the input.</summary>
    public static Setting DigitalInput1 { get; } = OneOf("digital-input-1", "function of the input", "none", "run-forward", "run-reverse", "reverse", "jog", "enable", "quick-stop", "coast", "trip-reset", "external-trip", "fixed-frequency-1", "fixed-frequency-2", "fixed-frequency-3", "second-ramps", "control-from-panel", "brake-feedback");

    /// <summary><c>digital-input-2</c>: function of the input.</summary>
    public static Setting DigitalInput2 { get; } = OneOf("digital-input-2", "function of the input", "none", "run-forward", "run-reverse", "reverse", "jog", "enable", "quick-stop", "coast", "trip-reset", "external-trip", "fixed-frequency-1", "fixed-frequency-2", "fixed-frequency-3", "second-ramps", "control-from-panel", "brake-feedback");

    /// <summary><c>digital-input-3</c>: function of the input.</summary>
    public static Setting DigitalInput3 { get; } = OneOf("digital-input-3", "function of the input", "none", "run-forward", "run-reverse", "reverse", "jog", "enable", "quick-stop", "coast", "trip-reset", "external-trip", "fixed-frequency-1", "fixed-frequency-2", "fixed-frequency-3", "second-ramps", "control-from-panel", "brake-feedback");

    /// <summary><c>digital-input-4</c>: function of the input.</summary>
    public static Setting DigitalInput4 { get; } = OneOf("digital-input-4", "function of the input", "none", "run-forward", "run-reverse", "reverse", "jog", "enable", "quick-stop", "coast", "trip-reset", "external-trip", "fixed-frequency-1", "fixed-frequency-2", "fixed-frequency-3", "second-ramps", "control-from-panel", "brake-feedback");

    /// <summary><c>digital-input-5</c>: function of the input.</summary>
    public static Setting DigitalInput5 { get; } = OneOf("digital-input-5", "function of the input", "none", "run-forward", "run-reverse", "reverse", "jog", "enable", "quick-stop", "coast", "trip-reset", "external-trip", "fixed-frequency-1", "fixed-frequency-2", "fixed-frequency-3", "second-ramps", "control-from-panel", "brake-feedback");

    /// <summary><c>digital-input-6</c>: function of the input.</summary>
    public static Setting DigitalInput6 { get; } = OneOf("digital-input-6", "function of the input", "none", "run-forward", "run-reverse", "reverse", "jog", "enable", "quick-stop", "coast", "trip-reset", "external-trip", "fixed-frequency-1", "fixed-frequency-2", "fixed-frequency-3", "second-ramps", "control-from-panel", "brake-feedback");

    /// <summary><c>relay-1</c>: function of the relay.</summary>
    public static Setting Relay1 { get; } = OneOf("relay-1", "function of the relay", "none", "ready", "running", "at-speed", "trip", "warning", "brake-open", "underload", "current-limit");

    /// <summary><c>relay-2</c>: function of the relay.</summary>
    public static Setting Relay2 { get; } = OneOf("relay-2", "function of the relay", "none", "ready", "running", "at-speed", "trip", "warning", "brake-open", "underload", "current-limit");

    /// <summary><c>relay-3</c>: function of the relay.</summary>
    public static Setting Relay3 { get; } = OneOf("relay-3", "function of the relay", "none", "ready", "running", "at-speed", "trip", "warning", "brake-open", "underload", "current-limit");

    /// <summary><c>fixed-frequency-1</c>: a fixed frequency.</summary>
    public static Setting FixedFrequency1 { get; } = Numeric("fixed-frequency-1", "a fixed frequency", "Hz", 1);

    /// <summary><c>fixed-frequency-2</c>: a fixed frequency.</summary>
    public static Setting FixedFrequency2 { get; } = Numeric("fixed-frequency-2", "a fixed frequency", "Hz", 1);

    /// <summary><c>fixed-frequency-3</c>: a fixed frequency.</summary>
    public static Setting FixedFrequency3 { get; } = Numeric("fixed-frequency-3", "a fixed frequency", "Hz", 1);

    /// <summary><c>fixed-frequency-4</c>: a fixed frequency.</summary>
    public static Setting FixedFrequency4 { get; } = Numeric("fixed-frequency-4", "a fixed frequency", "Hz", 1);

    /// <summary><c>fixed-frequency-5</c>: a fixed frequency.</summary>
    public static Setting FixedFrequency5 { get; } = Numeric("fixed-frequency-5", "a fixed frequency", "Hz", 1);

    /// <summary><c>fixed-frequency-6</c>: a fixed frequency.</summary>
    public static Setting FixedFrequency6 { get; } = Numeric("fixed-frequency-6", "a fixed frequency", "Hz", 1);

    /// <summary><c>fixed-frequency-7</c>: a fixed frequency.</summary>
    public static Setting FixedFrequency7 { get; } = Numeric("fixed-frequency-7", "a fixed frequency", "Hz", 1);

    /// <summary><c>jog-frequency</c>: frequency while jogging.</summary>
    public static Setting JogFrequency { get; } = Numeric("jog-frequency", "frequency while jogging", "Hz", 1);

    /// <summary><c>process-setpoint</c>: of the feedback's full scale.</summary>
    public static Setting ProcessSetpoint { get; } = Numeric("process-setpoint", "of the feedback's full scale", "%", 0.01);

    /// <summary><c>process-feedback-source</c>: where the feedback comes from.</summary>
    public static Setting ProcessFeedbackSource { get; } = OneOf("process-feedback-source", "where the feedback comes from", "analogue-1", "analogue-2", "bus");

    /// <summary><c>process-feedback-full-scale</c>: full scale in the process's own unit.</summary>
    public static Setting ProcessFeedbackFullScale { get; } = Numeric("process-feedback-full-scale", "full scale in the process's own unit", "1", 1);

    /// <summary><c>process-gain</c>: proportional gain.</summary>
    public static Setting ProcessGain { get; } = Numeric("process-gain", "proportional gain", "1", 1);

    /// <summary><c>process-integral-time</c>: integral time.</summary>
    public static Setting ProcessIntegralTime { get; } = Numeric("process-integral-time", "integral time", "s", 1);

    /// <summary><c>sleep-frequency</c>: goes to sleep below.</summary>
    public static Setting SleepFrequency { get; } = Numeric("sleep-frequency", "goes to sleep below", "Hz", 1);

    /// <summary><c>sleep-delay</c>: how long below.</summary>
    public static Setting SleepDelay { get; } = Numeric("sleep-delay", "how long below", "s", 1);

    /// <summary><c>wake-level</c>: of the feedback's full scale.</summary>
    public static Setting WakeLevel { get; } = Numeric("wake-level", "of the feedback's full scale", "%", 0.01);

    /// <summary><c>brake-open-frequency</c>: mechanical brake.</summary>
    public static Setting BrakeOpenFrequency { get; } = Numeric("brake-open-frequency", "mechanical brake", "Hz", 1);

    /// <summary><c>brake-open-current</c>: mechanical brake.</summary>
    public static Setting BrakeOpenCurrent { get; } = Numeric("brake-open-current", "mechanical brake", "A", 1);

    /// <summary><c>brake-open-delay</c>: mechanical brake.</summary>
    public static Setting BrakeOpenDelay { get; } = Numeric("brake-open-delay", "mechanical brake", "s", 1);

    /// <summary><c>brake-close-frequency</c>: mechanical brake.</summary>
    public static Setting BrakeCloseFrequency { get; } = Numeric("brake-close-frequency", "mechanical brake", "Hz", 1);

    /// <summary><c>encoder-pulses</c>: pulses per turn.</summary>
    public static Setting EncoderPulses { get; } = Numeric("encoder-pulses", "pulses per turn", "1", 1);

    /// <summary><c>encoder-loss</c>: encoder signal lost.</summary>
    public static Setting EncoderLoss { get; } = OneOf("encoder-loss", "encoder signal lost", "trip", "warn", "off");

    /// <summary><c>dc-preheat-current</c>: of motor rated current.</summary>
    public static Setting DcPreheatCurrent { get; } = Numeric("dc-preheat-current", "of motor rated current", "%", 0.01);

    /// <summary><c>parameter-lock</c>: keeps parameters from being changed.</summary>
    public static Setting ParameterLock { get; } = OneOf("parameter-lock", "keeps parameters from being changed", "on", "off");

    /// <summary><c>station-address</c>: unit on the bus.</summary>
    public static Setting StationAddress { get; } = Numeric("station-address", "unit on the bus", "1", 1);

    /// <summary><c>baud-rate</c>: of the serial line.</summary>
    public static Setting BaudRate { get; } = Numeric("baud-rate", "of the serial line", "bit/s", 1);

    /// <summary><c>parity</c>: of the serial line.</summary>
    public static Setting Parity { get; } = OneOf("parity", "of the serial line", "none", "even", "odd");

    /// <summary><c>bus-timeout</c>: longest silence; 0 is off.</summary>
    public static Setting BusTimeout { get; } = Numeric("bus-timeout", "longest silence; 0 is off", "s", 1);

    /// <summary><c>bus-loss-action</c>: what follows the time-out.</summary>
    public static Setting BusLossAction { get; } = OneOf("bus-loss-action", "what follows the time-out", "none", "coast", "ramp", "hold");

    /// <summary><c>power-unit</c>: unit in which the drive shows power; in some makes chosen together with 50/60 Hz.</summary>
    public static Setting PowerUnit { get; } = OneOf("power-unit", "unit in which the drive shows power; in some makes chosen together with 50/60 Hz", "kW", "hp");
}
