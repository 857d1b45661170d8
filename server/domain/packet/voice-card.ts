/** A card with a list of steps under headings; the same for every night. */
export interface VoiceCard {
  readonly title: string;
  readonly parts: readonly { readonly title: string; readonly steps: readonly string[] }[];
}

/** Getting the voice and the microphone ready. @source common practice, no source */
export const VOICE_CARD: VoiceCard = {
  title: 'Voice and microphone',
  parts: [
    {
      title: 'An hour before',
      steps: [
        'Drink water at room temperature, and keep a bottle within reach all night. Milk and sweet drinks coat the throat: leave them for later.',
        'Read every name on the line-up aloud, twice. Ask each coach about the ones you are not sure of, and write what you hear above the name.',
        'Read the new sponsor words once aloud at the speed of the gym, not of the office.',
      ],
    },
    {
      title: 'Ten minutes for the voice',
      steps: [
        'Stand up. Roll the shoulders, let the jaw hang, and yawn three times.',
        'Hum low and easy for a minute, then slide from low to high and back, five times.',
        'Count from one to twenty on one breath, first quietly, then as you will speak tonight.',
        'Say “red leather, yellow leather” ten times, slowly, with every letter.',
      ],
    },
    {
      title: 'The microphone',
      steps: [
        'Find the switch, the spare battery or cable, and who can turn the system up or down.',
        'Hold it a hand’s width from your mouth and speak across it, not into it. Keep that distance all night.',
        'Have someone stand in the far corner while you read the welcome. Ask: loud enough? Every word clear?',
        'Test the music, the anthem recording and the singer’s microphone at the same level. Then switch off.',
      ],
    },
    {
      title: 'While you speak',
      steps: [
        'Look at the crowd, wait one breath, begin. The first three words decide whether they listen.',
        'Slower than feels right: the room answers every word back to you.',
        'Let the last word end. Then switch the microphone off and lay it down with the switch up.',
        'Nothing is read while the ball is live, and nothing at all while someone lies on the floor.',
      ],
    },
  ],
};
