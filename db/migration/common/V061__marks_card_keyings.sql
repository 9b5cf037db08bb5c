-- What people keyed in from paper cards, each keying a row. Two of different people that say the same, or one
-- that says the same as the tablet, make a received card; else somebody settles what is on the paper.
create table card_keying (
  id uuid primary key,
  performance_id uuid not null references performance (id),
  seat_id uuid not null references seat (id),
  -- Counts the keyings of this seat's card.
  number int not null,
  keyed_by varchar(120) not null,
  -- The lines of the card as JSON: marks in hundredths, grades as they are.
  marks varchar(10000) not null,
  outcome varchar(20) not null,
  -- The version of the card that was received when this was written, 0 for none.
  card_sequence int not null,
  keyed_at timestamp(3) with time zone not null,
  constraint card_keying_once unique (performance_id, seat_id, number)
);
