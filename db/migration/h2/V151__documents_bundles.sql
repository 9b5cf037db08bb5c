-- Everything of a competition on paper, made in the background and kept for a day. What
-- is here can be made again at any time; nothing rests on it.
create table paper_bundle (
  id uuid primary key,
  competition_id uuid not null references competition (id) on delete cascade,
  paper varchar(10) not null,
  language varchar(10) not null,
  asked_by varchar(120) not null,
  asked_at timestamp(3) with time zone not null,
  -- The last sign of life of whoever makes it.
  heard_at timestamp(3) with time zone not null,
  -- How many documents there will be; null until they are counted.
  documents int,
  -- Why it could not be made; empty while all is well.
  trouble varchar(500) not null
);

create table paper_bundle_document (
  bundle_id uuid not null references paper_bundle (id) on delete cascade,
  number int not null,
  name varchar(400) not null,
  content blob not null,
  constraint paper_bundle_document_pk primary key (bundle_id, number)
);
